// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Seasons whose best tally was found outside Sillbook by a time-indexed integer program in HiGHS (https://highs.dev), a goal after the other; and all but the last once more, by trying every plan or, for
 * twelve pots, by a branch and bound in C. Many plans are as good; what is held is what a plan comes to and that its pots have room. A pot is written as its earliest and latest day, days to bloom, days in
 * bloom and the room it takes.
 */
class WorkedSeasonsTest {
    private static final String TWELVE =
            "35 55 21 7 1; 40 60 21 7 1; 45 65 21 7 1; 50 70 21 7 1; 55 75 21 7 1; 60 80 21 7 1; 40 60 14 9 1;"
                    + "48 68 14 9 1; 56 76 14 9 1; 64 84 14 9 1; 45 70 17 8 2; 65 90 17 8 2";

    @ParameterizedTest(name = "season {0} to {1}, room {2}")
    @CsvSource(
            delimiter = '|',
            nullValues = "none",
            value = {
                "100 | 129 | none | 70 80 21 8 1; 75 85 21 8 1; 80 95 21 8 1; 85 100 21 8 1 | 1 | 4 | 0",
                "100 | 130 | none | 80 84 14 10 1; 80 83 21 8 1; 105 110 16 9 1 | 10 | 3 | 0",
                "60 | 95 | 2 | 30 50 21 9 1; 30 60 21 9 1; 35 65 21 9 1; 40 70 21 9 1 | 12 | 3 | 0",
                "5 | 17 | none | 3 8 3 6 1; 5 8 3 3 1 | 4 | 2 | 0",
                "40 | 60 | none | 20 38 10 5 1; 28 32 10 7 1; 20 44 10 9 1 | 0 | 3 | 0",
                "10 | 24 | none | 0 6 5 6 1; 0 9 5 6 1; 2 12 5 6 1; 4 14 5 6 1; 6 14 5 6 1 | 0 | 3 | 0",
                "60 | 114 | 4 | " + TWELVE + " | 0 | 7 | 0",
                "60 | 114 | 2 | " + TWELVE + " | 19 | 4 | 0",
                "60 | 114 | 3 | " + TWELVE + " | 8 | 6 | 0"
            })
    void itsBestTallyIsProven(int first, int last, String room, String pots, int gapDays, int used, int overlap) {
        List<PotGroup> groups =
                Stream.of(pots.split(";", -1)).map(WorkedSeasonsTest::pot).toList();
        Room site = room == null ? Room.ENDLESS : Room.of(Integer.parseInt(room));
        Task task = new Task(new Season(first, last), List.of(site), List.of(), groups, List.of());
        Plan plan = Planner.plan(task);
        assertThat(plan.tally()).isEqualTo(new Tally(0, gapDays, used, overlap));
        assertThat(plan.isProven()).isTrue();
        assertThat(Exhaustive.of(task, plan.pulls())).contains(plan.tally());
    }

    private static PotGroup pot(String text) {
        int[] of = Stream.of(text.strip().split(" ", -1))
                .mapToInt(Integer::parseInt)
                .toArray();
        return PotGroup.of(of[0], of[1], of[2], of[3], of[4]);
    }
}
