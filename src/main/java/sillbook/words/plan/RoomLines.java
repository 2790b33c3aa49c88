// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.util.List;
import sillbook.plan.RoomTaken;
import sillbook.words.Counts;
import sillbook.words.Days;

/** How full a place gets by a plan, as text. */
final class RoomLines {
    private RoomLines() {}

    /** {@code garage fridge: 9 pots at most, of 9, from 11 Oct to 20 Dec}. */
    static String of(RoomTaken taken) {
        int most = taken.pots().stream().mapToInt(count -> count).max().orElse(0);
        String room = taken.berth().room().map(holds -> ", of " + holds).orElse("");
        return taken.berth().place().name() + ": "
                + (most == 0
                        ? "no pot" + room
                        : Counts.of(most, "pot") + " at most" + room + ", "
                                + Days.fromTo(
                                        day(taken, first(taken.pots(), most)),
                                        day(taken, taken.pots().lastIndexOf(most))));
    }

    private static int first(List<Integer> pots, int most) {
        return pots.indexOf(most);
    }

    private static LocalDate day(RoomTaken taken, int number) {
        return taken.days().start().plusDays(number);
    }
}
