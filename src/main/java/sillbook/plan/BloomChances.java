// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.List;
import sillbook.reckon.chance.Covering;
import sillbook.reckon.chance.Spell;
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
    private BloomChances() {}

    /** That at least one of these pots is in bloom, 0 to 1, for each day. */
    static List<Double> of(List<PlannedPot> pots, DaySpan days) {
        return Covering.of(pots.stream().map(pot -> spell(pot, days)).toList(), 0, (int) days.days())
                .chances();
    }

    /** When a pot is in bloom, counted from the first of some days. */
    static Spell spell(PlannedPot pot, DaySpan days) {
        return pot.candidate().settled().isPresent()
                ? new Spell(
                        DayChances.on(Dates.between(days.start(), pot.inFlower().start())),
                        DayChances.on(Dates.between(days.start(), pot.inFlower().endExclusive())))
                : spell(pot.candidate().forcing())
                        .later(Dates.between(days.start(), pot.course().in()));
    }

    /** When a pot is in bloom that comes in on day 0. */
    static Spell spell(Forcing forcing) {
        return Spell.of(chances(forcing.toFlower()), chances(forcing.inBloom()));
    }

    private static DayChances chances(DayCount length) {
        return Spell.days(new ThreePoints(length.low(), length.typical(), length.high()));
    }
}
