// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pots that are in already, or were put on a day by hand: a plan goes around them. */
class FixedPotsTest {
    private static final PotGroup TULIPS = PotGroup.of(0, 30, 5, 4, 1).withCount(3);

    private static Task task(int first, int last, Room room, PotGroup... pots) {
        return new Task(new Season(first, last), List.of(room), List.of(), List.of(pots), List.of());
    }

    private static Pull pull(int group, int day) {
        return new Pull(group, day, 0, OptionalInt.empty());
    }

    private static Plan plan(Task task, Pull... fixed) {
        return Planner.plan(task, List.of(fixed), Planner.USUAL_EFFORT, Watch.PATIENT);
    }

    /** The pot that is in has its four days, 14 to 17, or 12 to 15; the others take those around. Before 12 only two are wanted, and so two are left at the end. */
    @Test
    void theOthersFollow() {
        Plan plan = plan(task(10, 21, Room.ENDLESS, TULIPS), pull(0, 9));
        assertThat(plan.tally()).isEqualTo(new Tally(0, 0, 3, 0));
        assertThat(plan.pulls()).extracting(Pull::day).containsExactly(5, 9, 13);
        assertThat(plan.isProven()).isTrue();
        assertThat(plan(task(10, 21, Room.ENDLESS, TULIPS), pull(0, 7)).tally()).isEqualTo(new Tally(0, 2, 3, 0));
    }

    @Test
    void aPotThatIsInTooEarlyStillStands() {
        Plan plan = plan(task(10, 13, Room.of(1), TULIPS), pull(0, -1));
        assertThat(plan.pulls()).extracting(Pull::day).containsExactly(-1, 8);
        assertThat(plan.tally()).isEqualTo(new Tally(0, 3, 2, 0));
    }

    @Test
    void whereFixedPotsAreTooManyNothingElseComes() {
        Plan plan = plan(task(10, 17, Room.of(1), TULIPS), pull(0, 5), pull(0, 7));
        assertThat(plan.pulls()).extracting(Pull::day).containsExactly(5, 7);
        assertThat(plan.tally()).isEqualTo(new Tally(0, 2, 2, 2));
        assertThat(plan.isProven()).isTrue();
    }

    @Test
    void moreThanThereAreIsRefused() {
        assertThatThrownBy(() -> plan(task(10, 17, Room.of(1), PotGroup.of(0, 9, 5, 4, 1)), pull(0, 5), pull(0, 7)))
                .isInstanceOf(Unreckonable.class)
                .hasMessage("2 of pot 1 are fixed; there is 1");
        assertThatThrownBy(() -> plan(task(10, 17, Room.of(1), TULIPS), pull(0, 5), pull(0, 7), pull(0, 8), pull(0, 9)))
                .hasMessage("4 of pot 1 are fixed; there are 3");
        assertThatThrownBy(() -> plan(task(10, 17, Room.of(1), TULIPS), pull(1, 5)))
                .hasMessage("the pot is 2; it must be 1 to 1");
        assertThatThrownBy(() -> plan(task(10, 17, Room.of(1), TULIPS), new Pull(0, 5, 1, OptionalInt.empty())))
                .hasMessage("the site is 2; it must be 1 to 1");
        assertThatThrownBy(() -> plan(task(10, 17, Room.of(1), TULIPS), new Pull(0, 5, 0, OptionalInt.of(0))))
                .hasMessage("the cold place is 1; no cold place is given");
    }

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    /** Against every plan there is for the rest of the pots. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noPlanAroundThemIsBetter(int seed) {
        Task task = new SmallTask(seed).draw();
        List<Pull> fixed = some(task, new SplittableRandom(seed));
        Plan plan = Planner.plan(task, fixed, Planner.USUAL_EFFORT, Watch.PATIENT);
        assertThat(plan.pulls()).containsAll(fixed);
        assertThat(plan.tally()).isEqualTo(Exhaustive.best(task, fixed));
        assertThat(plan.tally()).isEqualTo(Evaluation.of(task, plan.pulls()).tally());
        assertThat(plan.isProven()).isTrue();
    }

    /** One or two pots on their days or a little beside, with room or without. */
    private static List<Pull> some(Task task, SplittableRandom random) {
        List<Pull> fixed = new ArrayList<>();
        for (int group = 0; group < Math.min(2, task.pots().size()); group++) {
            PotGroup pots = task.pots().get(group);
            int day = pots.earliest() - 1 + random.nextInt(pots.latest() - pots.earliest() + 3);
            int site = pots.sites().isEmpty()
                    ? random.nextInt(task.sites().size())
                    : pots.sites().get(0);
            OptionalInt cold =
                    pots.cold().stream().mapToInt(stay -> stay.places().get(0)).findFirst();
            fixed.add(new Pull(group, day, site, cold));
        }
        return fixed;
    }
}
