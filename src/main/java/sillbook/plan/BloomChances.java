// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sillbook.reckon.chance.Covering;
import sillbook.reckon.chance.Spell;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.ThreePoints;
import sillbook.season.Forcing;

/**
 * How likely something is in bloom on a day: each pot opens its first flower after a length of which the least, the usual and the most are
 * known, and is in bloom for another such length. Pots are taken not to depend on each other, though they share a room's weather, so that a
 * chance is a little too sure of itself.
 */
final class BloomChances {
    private final DaySpan days;
    private final Map<List<DayCount>, Spell> known = new HashMap<>();
    private final List<Spell> spells;

    /** Of the pots of a plan, for the days of its season. */
    BloomChances(List<PlannedPot> pots, DaySpan days) {
        this.days = days;
        this.spells = pots.stream().map(this::spell).toList();
    }

    /** That at least one of these pots is in bloom, 0 to 1, for each day. */
    List<Double> covering() {
        return Covering.of(spells, 0, (int) days.days()).chances();
    }

    /** That one of the pots, by its number, is in bloom on a day. */
    double of(int pot, LocalDate day) {
        return spells.get(pot).chanceOn(Dates.between(days.start(), day));
    }

    private Spell spell(PlannedPot pot) {
        return pot.candidate().settled().isPresent()
                ? new Spell(
                        DayChances.on(Dates.between(days.start(), pot.inFlower().start())),
                        DayChances.on(Dates.between(days.start(), pot.inFlower().endExclusive())))
                : spell(pot.candidate().forcing())
                        .later(Dates.between(days.start(), pot.course().in()));
    }

    /** When a pot is in bloom that comes in on day 0; worked out once for all that take the same. */
    Spell spell(Forcing forcing) {
        return known.computeIfAbsent(
                List.of(forcing.toFlower(), forcing.inBloom()),
                lengths -> Spell.of(chances(lengths.get(0)), chances(lengths.get(1))));
    }

    private static DayChances chances(DayCount length) {
        return Spell.days(new ThreePoints(length.low(), length.typical(), length.high()));
    }
}
