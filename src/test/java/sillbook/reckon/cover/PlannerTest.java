// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlannerTest {
    private static final PotGroup TULIPS = like(PotGroup.of(0, 30, 5, 4, 1), 3);

    private static PotGroup like(PotGroup pot, int count) {
        return pot.withCount(count);
    }

    private static PotGroup chilled(PotGroup pot, int from, Integer... places) {
        return new PotGroup(
                pot.earliest(),
                pot.latest(),
                pot.toBloom(),
                pot.lasts(),
                pot.takes(),
                pot.count(),
                pot.sites(),
                Optional.of(new ColdStay(from, List.of(places))));
    }

    private static Task task(int first, int last, List<PotGroup> pots) {
        return new Task(new Season(first, last), List.of(Room.ENDLESS), List.of(), pots, List.of());
    }

    /** Sixty pots on three tight sites, with three dated wishes: not to be proven in a while. */
    private static Task large() {
        SplittableRandom random = new SplittableRandom(7);
        List<PotGroup> pots = IntStream.range(0, 60)
                .mapToObj(pot -> {
                    int earliest = 60 + random.nextInt(110);
                    int takes = 1 + random.nextInt(4) / 3;
                    return PotGroup.of(
                            earliest,
                            earliest + 2 + random.nextInt(8),
                            14 + random.nextInt(12),
                            6 + random.nextInt(6),
                            takes);
                })
                .toList();
        List<Room> sites = List.of(Room.of(2), Room.of(2), Room.of(1));
        List<DayWish> wishes = List.of(
                new DayWish(120, 3, List.of()),
                new DayWish(160, 3, IntStream.range(0, 30).boxed().toList()));
        return new Task(new Season(100, 190), sites, List.of(), pots, wishes);
    }

    @Test
    void potsThatAreAlikeFollowOneAnother() {
        Plan plan = Planner.plan(task(10, 21, List.of(TULIPS)));
        assertThat(plan.tally()).isEqualTo(new Tally(0, 0, 3, 0));
        assertThat(plan.pulls()).extracting(Pull::day).containsExactly(5, 9, 13);
        assertThat(plan.longestGap()).isZero();
        assertThat(plan.isProven()).isTrue();
    }

    @Test
    void alikeIsToldBackInTheGroupsOfTheTask() {
        Plan plan = Planner.plan(task(10, 21, List.of(like(TULIPS, 1), like(TULIPS, 2))));
        assertThat(plan.pulls()).extracting(Pull::group).containsExactly(0, 1, 1);
        assertThat(plan.pulls()).extracting(Pull::day).containsExactlyInAnyOrder(5, 9, 13);
    }

    @Test
    void nothingBloomsOfNothing() {
        Plan plan = Planner.plan(task(10, 21, List.of()));
        assertThat(plan.tally()).isEqualTo(new Tally(0, 12, 0, 0));
        assertThat(plan.longestGap()).isEqualTo(12);
        assertThat(plan.isProven()).isTrue();
    }

    @Test
    void whatBloomsOutsideTheSeasonIsLeftOut() {
        Plan plan = Planner.plan(task(100, 110, List.of(TULIPS, PotGroup.of(300, 310, 5, 4, 1))));
        assertThat(plan.pulls()).isEmpty();
    }

    @Test
    void aLaterDayMayTakeFewerDays() {
        PotGroup hastening = new PotGroup(0, 3, List.of(10, 8, 6, 4), 3, 1, 1, List.of(), Optional.empty());
        Plan plan = Planner.plan(task(7, 9, List.of(hastening)));
        assertThat(plan.tally()).isEqualTo(new Tally(0, 0, 1, 0));
        assertThat(plan.pulls()).containsExactly(new Pull(0, 3, 0, OptionalInt.empty()));
    }

    @Test
    void eachSiteHasItsOwnRoom() {
        PotGroup large = new PotGroup(0, 8, PotGroup.steady(0, 8, 5), 4, 2, 2, List.of(), Optional.empty());
        List<Room> sites = List.of(Room.of(2), Room.of(1), Room.of(2));
        Task task = new Task(new Season(5, 12), sites, List.of(), List.of(large), List.of());
        Plan plan = Planner.plan(task);
        assertThat(plan.tally()).isEqualTo(new Tally(0, 0, 2, 0));
        assertThat(plan.pulls()).extracting(Pull::site).containsExactlyInAnyOrder(0, 2);
    }

    @Test
    void aPotStandsOnlyWhereItMay() {
        PotGroup second = new PotGroup(0, 8, PotGroup.steady(0, 8, 5), 4, 1, 1, List.of(1), Optional.empty());
        Task task =
                new Task(new Season(5, 8), List.of(Room.ENDLESS, Room.ENDLESS), List.of(), List.of(second), List.of());
        assertThat(Planner.plan(task).pulls()).extracting(Pull::site).containsExactly(1);
    }

    @Test
    void theColdHoldsSoManyUntilTheyComeIn() {
        List<PotGroup> two =
                List.of(chilled(PotGroup.of(10, 12, 5, 3, 1), 0, 0), chilled(PotGroup.of(13, 15, 5, 3, 1), 0, 0));
        Task tight = new Task(new Season(15, 20), List.of(Room.ENDLESS), List.of(Room.of(1)), two, List.of());
        assertThat(Planner.plan(tight).tally()).isEqualTo(new Tally(0, 3, 1, 0));
        Task wide = new Task(new Season(15, 20), List.of(Room.ENDLESS), List.of(Room.of(2)), two, List.of());
        assertThat(Planner.plan(wide).tally()).isEqualTo(new Tally(0, 0, 2, 0));
        Task another = new Task(
                new Season(15, 20),
                List.of(Room.ENDLESS),
                List.of(Room.of(1), Room.of(1)),
                List.of(two.get(0), chilled(two.get(1), 0, 0, 1)),
                List.of());
        Plan plan = Planner.plan(another);
        assertThat(plan.tally()).isEqualTo(new Tally(0, 0, 2, 0));
        assertThat(plan.pulls()).extracting(Pull::cold).containsExactly(OptionalInt.of(0), OptionalInt.of(1));
    }

    @Test
    void aWishForADayComesBeforeTheSeason() {
        List<PotGroup> pots = List.of(like(TULIPS, 2), PotGroup.of(0, 30, 5, 4, 1));
        DayWish both = new DayWish(12, 2, List.of(0));
        Task task = new Task(new Season(10, 17), List.of(Room.ENDLESS), List.of(), pots, List.of(both));
        assertThat(Planner.plan(task).tally()).isEqualTo(new Tally(0, 0, 3, 1));
        DayWish more = new DayWish(12, 3, List.of(0));
        Task tooMuch = new Task(new Season(10, 17), List.of(Room.ENDLESS), List.of(), pots, List.of(more));
        assertThat(Planner.plan(tooMuch).tally().unmet()).isEqualTo(1);
    }

    @Test
    void theSameTaskGivesTheSamePlan() {
        Task task = large();
        Plan once = Planner.plan(task, 300_000, Watch.PATIENT);
        assertThat(Planner.plan(task, 300_000, Watch.PATIENT)).isEqualTo(once);
    }

    @Test
    void theBestSoFarIsWhatAStopGives() {
        List<Plan> told = new ArrayList<>();
        Watch impatient = new Watch() {
            @Override
            public boolean wantsStop() {
                return told.size() > 3;
            }

            @Override
            public void found(Plan best) {
                told.add(best);
            }
        };
        Plan plan = Planner.plan(large(), Long.MAX_VALUE, impatient);
        assertThat(plan.isProven()).isFalse();
        assertThat(told.get(told.size() - 1)).isEqualTo(plan);
        assertThat(told.stream().map(Plan::tally)).isSortedAccordingTo(Collections.reverseOrder());
    }

    /** As a screen does it: the search has its own thread, and the one that looks stops it when it has seen enough. */
    @Test
    void itIsLookedAtAndStoppedFromAnotherThread() throws InterruptedException, ExecutionException {
        AtomicBoolean isEnough = new AtomicBoolean();
        AtomicReference<Double> spent = new AtomicReference<>(0.0);
        BlockingQueue<Plan> plans = new LinkedBlockingQueue<>();
        Watch screen = new Watch() {
            @Override
            public boolean wantsStop() {
                return isEnough.get();
            }

            @Override
            public void spent(double part) {
                spent.set(part);
            }

            @Override
            public void found(Plan best) {
                plans.add(best);
            }
        };
        FutureTask<Plan> search = new FutureTask<>(() -> Planner.plan(large(), Long.MAX_VALUE, screen));
        Thread thread = new Thread(search);
        thread.start();
        Plan first = plans.take();
        isEnough.set(true);
        thread.join();
        Plan last = search.get();
        assertThat(last.tally()).isLessThanOrEqualTo(first.tally());
        assertThat(last.isProven()).isFalse();
        assertThat(spent.get()).isBetween(0.0, 1.0);
    }

    @Test
    void howMuchIsSpentIsTold() {
        List<Double> parts = new ArrayList<>();
        Planner.plan(large(), 300_000, new Watch() {
            @Override
            public boolean wantsStop() {
                return false;
            }

            @Override
            public void spent(double part) {
                parts.add(part);
            }

            @Override
            public void found(Plan best) {
                // Only the effort is looked at.
            }
        });
        assertThat(parts).isSorted().hasSizeGreaterThan(5);
        assertThat(parts.get(0)).isPositive().isLessThan(.1);
        assertThat(parts.get(parts.size() - 1)).isGreaterThan(.9).isLessThanOrEqualTo(1);
    }

    @Test
    void whatIsNotProvenHasABound() {
        Plan plan = Planner.plan(large(), 200_000, Watch.PATIENT);
        assertThat(plan.isProven()).isFalse();
        for (Stage.Goal goal : Stage.Goal.values()) {
            assertThat(goal.of(plan.bound())).isLessThanOrEqualTo(goal.of(plan.tally()));
        }
        assertThat(plan.tally().unmet()).isZero();
    }

    /** With next to no effort there is only what no pot at all comes to, and what the bound without prices says. */
    @Test
    void nextToNoEffortGivesNoPotAndABound() {
        Plan plan = Planner.plan(large(), 1, Watch.PATIENT);
        assertThat(plan.pulls()).isEmpty();
        assertThat(plan.tally()).isEqualTo(new Tally(6, 91, 0, 0));
        assertThat(plan.bound()).isEqualTo(new Tally(0, 0, 0, 0));
    }

    private static void holdToItsBound(Plan plan, Tally known) {
        boolean isAsGood = true;
        for (Stage.Goal goal : Stage.Goal.values()) {
            assertThat(goal.of(plan.bound())).isLessThanOrEqualTo(goal.of(plan.tally()));
            if (isAsGood) {
                assertThat(goal.of(plan.bound())).isLessThanOrEqualTo(goal.of(known));
                isAsGood = goal.of(plan.tally()) == goal.of(known);
            }
        }
    }

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    /** However early the search ends: what it says no plan goes below, the best of all plans does not go below. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noPlanGoesBelowItsBound(int seed) {
        Task task = new SmallTask(seed).draw();
        Tally least = Exhaustive.best(task);
        for (long effort = 1; effort < 20_000; effort *= 4) {
            Plan plan = Planner.plan(task, effort, Watch.PATIENT);
            assertThat(Exhaustive.of(task, plan.pulls())).contains(plan.tally());
            assertThat(plan.tally()).isGreaterThanOrEqualTo(least);
            holdToItsBound(plan, least);
        }
    }

    static IntStream crowds() {
        return IntStream.range(0, 60);
    }

    /** Where wishes and room are at odds, a sweep for days may come upon a plan that lacks fewer pots, or one for pots upon fewer days. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("crowds")
    void noPlanForACrowdGoesBelowItsBound(int seed) {
        Task task = crowded(seed);
        List<Plan> plans = LongStream.iterate(200, effort -> effort < 60_000, effort -> effort * 5 / 4)
                .mapToObj(effort -> Planner.plan(task, effort, Watch.PATIENT))
                .toList();
        Tally known = plans.stream().map(Plan::tally).min(Tally::compareTo).orElseThrow();
        plans.forEach(plan -> holdToItsBound(plan, known));
    }

    /** Pots each with its own day or two on tight sites, and two wishes for pots of which each may not have enough. */
    private static Task crowded(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<PotGroup> pots = IntStream.range(0, 8)
                .mapToObj(pot -> {
                    int earliest = 60 + random.nextInt(50);
                    return PotGroup.of(
                            earliest,
                            earliest + random.nextInt(2),
                            14 + random.nextInt(12),
                            4 + random.nextInt(8),
                            1 + random.nextInt(2));
                })
                .toList();
        List<DayWish> wishes = IntStream.range(0, 2)
                .mapToObj(wish -> new DayWish(
                        90 + random.nextInt(30),
                        1 + random.nextInt(3),
                        IntStream.range(0, 8)
                                .filter(pot -> random.nextBoolean())
                                .boxed()
                                .toList()))
                .toList();
        return new Task(new Season(85, 125), List.of(Room.of(2), Room.of(2)), List.of(), pots, wishes);
    }
}
