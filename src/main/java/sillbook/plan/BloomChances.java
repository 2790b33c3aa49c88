// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.ThreePoints;

/**
 * How likely something is in bloom on a day: each pot opens its first flower after a length of which the least, the usual and the most are
 * known, and is in bloom for another such length, as betas of the shape of PERT. Pots are taken not to depend on each other, though they
 * share a room's weather, so that a chance is a little too sure of itself.
 */
final class BloomChances {
    private final Map<DayCount, DayChances> known = new HashMap<>();
    private final DaySpan days;

    private BloomChances(DaySpan days) {
        this.days = days;
    }

    /** That at least one of these pots is in bloom, 0 to 1, for each day. */
    static List<Double> of(List<PlannedPot> pots, DaySpan days) {
        BloomChances chances = new BloomChances(days);
        double[] none = new double[(int) days.days()];
        Arrays.fill(none, 1);
        pots.forEach(pot -> chances.leaveOut(pot, none));
        return Arrays.stream(none).mapToObj(empty -> 1 - empty).toList();
    }

    private void leaveOut(PlannedPot pot, double[] none) {
        double[] inBloom = of(pot);
        for (int day = 0; day < none.length; day++) {
            none[day] *= 1 - inBloom[day];
        }
    }

    /** That one pot is in bloom, for each day. */
    static double[] of(PlannedPot pot, DaySpan days) {
        return new BloomChances(days).of(pot);
    }

    private double[] of(PlannedPot pot) {
        double[] chances = new double[(int) days.days()];
        if (pot.candidate().settled().isPresent()) {
            pot.inFlower()
                    .intersection(days)
                    .ifPresent(flowers -> Arrays.fill(
                            chances,
                            Dates.between(days.start(), flowers.start()),
                            Dates.between(days.start(), flowers.endExclusive()),
                            1));
            return chances;
        }
        DayCount bloom = pot.candidate().forcing().inBloom();
        DayChances opens = chances(pot.candidate().forcing().toFlower())
                .later(Dates.between(days.start(), pot.course().in()));
        DayChances lasts = chances(bloom);
        double[] by = new double[chances.length + bloom.high() + 2];
        for (int day = 0; day < by.length; day++) {
            by[day] = opens.chanceBy(day - bloom.high() - 1);
        }
        for (int length = bloom.low(); length <= bloom.high(); length++) {
            double share = lasts.chanceOn(length);
            for (int day = 0; share > 0 && day < chances.length; day++) {
                int at = day + bloom.high() + 1;
                chances[day] += share * (by[at] - by[at - length]);
            }
        }
        return chances;
    }

    private DayChances chances(DayCount length) {
        return known.computeIfAbsent(
                length,
                days -> days.low() == days.high()
                        ? DayChances.on(days.low())
                        : DayChances.of(new ThreePoints(days.low(), days.typical(), days.high()).beta()));
    }
}
