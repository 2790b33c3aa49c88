// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;
import java.util.stream.Stream;

/**
 * A season on one site whose best tally was found outside Sillbook by a time-indexed integer program in HiGHS (https://highs.dev), a goal after the other; and all but the twelve pots with room for 3 once more, by trying every
 * plan or, for twelve pots, by a branch and bound in C. Many plans are as good; what is held is what a plan comes to.
 */
public record WorkedSeason(Task task, Tally best) {
    private static final String TWELVE =
            "35 55 21 7 1; 40 60 21 7 1; 45 65 21 7 1; 50 70 21 7 1; 55 75 21 7 1; 60 80 21 7 1; 40 60 14 9 1;"
                    + "48 68 14 9 1; 56 76 14 9 1; 64 84 14 9 1; 45 70 17 8 2; 65 90 17 8 2";

    /** All there are. */
    public static List<WorkedSeason> all() {
        return List.of(
                of(100, 129, Room.ENDLESS, "70 80 21 8 1; 75 85 21 8 1; 80 95 21 8 1; 85 100 21 8 1", 1, 4),
                of(100, 130, Room.ENDLESS, "80 84 14 10 1; 80 83 21 8 1; 105 110 16 9 1", 10, 3),
                of(60, 95, Room.of(2), "30 50 21 9 1; 30 60 21 9 1; 35 65 21 9 1; 40 70 21 9 1", 12, 3),
                of(5, 17, Room.ENDLESS, "3 8 3 6 1; 5 8 3 3 1", 4, 2),
                of(40, 60, Room.ENDLESS, "20 38 10 5 1; 28 32 10 7 1; 20 44 10 9 1", 0, 3),
                of(10, 24, Room.ENDLESS, "0 6 5 6 1; 0 9 5 6 1; 2 12 5 6 1; 4 14 5 6 1; 6 14 5 6 1", 0, 3),
                of(60, 114, Room.of(4), TWELVE, 0, 7),
                of(60, 114, Room.of(3), TWELVE, 8, 6),
                of(60, 114, Room.of(2), TWELVE, 19, 4));
    }

    /** A pot is written as its earliest and latest day, days to bloom, days in bloom and the room it takes; none of these overlaps at its best. */
    private static WorkedSeason of(int first, int last, Room room, String pots, int gapDays, int used) {
        List<PotGroup> groups =
                Stream.of(pots.split(";", -1)).map(WorkedSeason::pot).toList();
        Task task = new Task(new Season(first, last), List.of(room), List.of(), groups, List.of());
        return new WorkedSeason(task, new Tally(0, gapDays, used, 0));
    }

    private static PotGroup pot(String text) {
        int[] of = Stream.of(text.strip().split(" ", -1))
                .mapToInt(Integer::parseInt)
                .toArray();
        return PotGroup.of(of[0], of[1], of[2], of[3], of[4]);
    }

    @Override
    public String toString() {
        String room = task.sites().get(0).most().isPresent()
                ? "room for " + task.sites().get(0).most().getAsInt()
                : "endless room";
        return task.pots().size() + " pots, " + task.season().days() + " days, " + room;
    }
}
