// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import sillbook.plan.Ribbon;
import sillbook.plan.RoomTaken;
import sillbook.reckon.dates.DaySpan;

/** What blooms in a planned season and how full its places get, as JSON. */
final class BloomJson {
    private BloomJson() {}

    static Fields span(DaySpan days) {
        return new Fields().day("from", days.start()).day("to", days.last());
    }

    static Fields bloom(Ribbon ribbon) {
        return new Fields()
                .day("from", ribbon.days().start())
                .numbers("pots", ribbon.pots())
                .decimals(
                        "chances",
                        ribbon.chances().stream().mapToDouble(chance -> chance).toArray())
                .list("wished", ribbon.wished(), BloomJson::span)
                .list("gaps", ribbon.gaps(), BloomJson::span)
                .number("gapDays", ribbon.gapDays())
                .number("longestGap", ribbon.longestGap())
                .number("mostAtOnce", ribbon.mostAtOnce());
    }

    static Fields room(RoomTaken taken) {
        return new Fields()
                .text("place", taken.berth().place().name())
                .whole("room", taken.berth().room())
                .day("from", taken.days().start())
                .numbers("pots", taken.pots());
    }
}
