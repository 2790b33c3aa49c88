// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What given days come to, counted by hand, and by the trial of all plans beside it. */
class EvaluationTest {
    private static final PotGroup CHILLED =
            new PotGroup(8, 10, List.of(5, 4, 3), 3, 2, 2, List.of(), Optional.of(new ColdStay(6, List.of(0))));
    private static final PotGroup FREE = PotGroup.of(9, 9, 3, 4, 1);
    private static final Task TASK = new Task(
            new Season(12, 20),
            List.of(Room.of(3), Room.ENDLESS),
            List.of(Room.of(3)),
            List.of(CHILLED, FREE),
            List.of(new DayWish(13, 3, List.of()), new DayWish(13, 1, List.of(1)), new DayWish(20, 1, List.of())));

    private static Pull chilled(int day, int site) {
        return new Pull(0, day, site, OptionalInt.of(0));
    }

    /** Whether no place is ever asked for more than it has. */
    private static boolean hasRoom(Task task, Evaluation these) {
        return hasRoom(task.sites(), these.sites()) && hasRoom(task.colds(), these.colds());
    }

    private static boolean hasRoom(List<Room> rooms, List<Load> loads) {
        return IntStream.range(0, rooms.size())
                .allMatch(place -> loads.get(place).beyond(rooms.get(place)).isEmpty());
    }

    /** In bloom from 13 to 15, from 13 to 15 and from 12 to 15. */
    @Test
    void eachDayIsCounted() {
        Evaluation these =
                Evaluation.of(TASK, List.of(chilled(8, 0), chilled(10, 0), new Pull(1, 9, 1, OptionalInt.empty())));
        assertThat(these.inBloom()).containsExactly(1, 3, 3, 3, 0, 0, 0, 0, 0);
        assertThat(these.tally()).isEqualTo(new Tally(1, 5, 3, 6));
        assertThat(these.longestGap()).isEqualTo(5);
        assertThat(these.lacking()).containsExactly(0, 0, 1);
        assertThat(these.sites().get(0)).isEqualTo(new Load(8, List.of(2, 2, 4, 4, 4, 4, 4, 4)));
        assertThat(these.sites().get(1)).isEqualTo(new Load(9, List.of(1, 1, 1, 1, 1, 1, 1)));
        assertThat(these.colds().get(0)).isEqualTo(new Load(6, List.of(4, 4, 2, 2)));
    }

    @Test
    void whereThereIsNoRoomIsTold() {
        Evaluation these = Evaluation.of(TASK, List.of(chilled(8, 0), chilled(10, 0)));
        assertThat(these.sites().get(0).beyond(Room.of(3))).containsExactly(10, 11, 12, 13, 14, 15);
        assertThat(these.colds().get(0).beyond(Room.of(3))).containsExactly(6, 7);
        assertThat(these.colds().get(0).beyond(Room.ENDLESS)).isEmpty();
        assertThat(hasRoom(TASK, these)).isFalse();
        assertThat(hasRoom(TASK, Evaluation.of(TASK, List.of(chilled(8, 1), chilled(10, 0)))))
                .isFalse();
        assertThat(hasRoom(TASK, Evaluation.of(TASK, List.of(chilled(8, 0))))).isTrue();
        assertThat(these.colds().get(0).on(5)).isZero();
        assertThat(these.colds().get(0).on(10)).isZero();
    }

    @Test
    void aPotBesideItsDaysTakesAsLongAsOnTheNearest() {
        assertThat(Evaluation.of(TASK, List.of(chilled(12, 0))).inBloom()).containsExactly(0, 0, 0, 1, 1, 1, 0, 0, 0);
        assertThat(Evaluation.of(TASK, List.of(chilled(7, 0))).inBloom()).containsExactly(1, 1, 1, 0, 0, 0, 0, 0, 0);
    }

    @Test
    void aPotThatNeverWasInTheColdTakesNothingThere() {
        Evaluation early = Evaluation.of(TASK, List.of(chilled(5, 0)));
        assertThat(early.colds().get(0).on(5)).isZero();
        assertThat(early.colds().get(0).on(6)).isZero();
        assertThat(hasRoom(TASK, early)).isTrue();
    }

    static IntStream seeds() {
        return IntStream.range(0, 100);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void asTheTrialOfAllPlansCountsIt(int seed) {
        Task task = new SmallTask(seed).draw();
        Plan plan = Planner.plan(task);
        Evaluation these = Evaluation.of(task, plan.pulls());
        assertThat(hasRoom(task, these)).isTrue();
        assertThat(Exhaustive.of(task, plan.pulls())).contains(these.tally());
        assertThat(these.longestGap()).isEqualTo(plan.longestGap());
    }
}
