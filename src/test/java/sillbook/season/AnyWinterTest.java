// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;

/** What must be true of any winter on any day; the seed tells which. */
class AnyWinterTest {
    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    private static Outlook outlook(long seed) {
        return RandomWinter.of(seed).on(RandomWinter.today(seed));
    }

    private static List<PotNow> pots(Outlook outlook) {
        return outlook.pots(outlook.today().season());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyJobIsShownOnceAndNoneIsLost(long seed) {
        Outlook outlook = outlook(seed);
        List<Id<Pot>> withJobs = pots(outlook).stream()
                .filter(pot -> pot.next().isPresent())
                .map(pot -> pot.life().pot().id())
                .toList();
        assertThat(shown(outlook)).containsExactlyInAnyOrderElementsOf(withJobs);
    }

    /** What waits for its first flower is among what opens next, beside pots that have no job left. */
    private static List<Id<Pot>> shown(Outlook outlook) {
        Today today = outlook.today();
        List<Id<Pot>> shown = new ArrayList<>();
        Stream.of(today.late(), today.ready(), today.due(), today.soon(), today.later())
                .flatMap(List::stream)
                .forEach(job -> shown.addAll(job.pots()));
        today.checks().forEach(round -> shown.addAll(round.settles()));
        today.inBloom().stream().flatMap(bloom -> bloom.job().stream()).forEach(job -> shown.addAll(job.pots()));
        today.opening().stream()
                .map(Today.Opening::pots)
                .flatMap(Collection::stream)
                .filter(pot -> isWaitingForFlower(outlook, pot))
                .forEach(shown::add);
        return shown;
    }

    /** A row is called by its pots; those of its batch that have another job are not among them. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyPotOfARowHasTheJobOfTheRow(long seed) {
        Outlook outlook = outlook(seed);
        Today today = outlook.today();
        Stream.of(today.late(), today.ready(), today.due(), today.soon(), today.later())
                .flatMap(List::stream)
                .forEach(job -> assertThat(job.pots()).allSatisfy(pot -> {
                    assertThat(outlook.job(pot)).contains(job);
                    assertThat(outlook.pot(pot).next().orElseThrow().kind()).isEqualTo(job.kind());
                    assertThat(outlook.pot(pot).life().stands().map(Stay::place))
                            .isEqualTo(job.route().from());
                }));
        outlook.lines(today.season())
                .forEach(line -> assertThat(line.pots())
                        .as("a batch is one row until all of it is done")
                        .allSatisfy(pot -> assertThat(
                                        line.batch().map(BatchShare::pots).orElse(line.pots()))
                                .contains(pot)));
    }

    private static boolean isWaitingForFlower(Outlook outlook, Id<Pot> pot) {
        return outlook.job(pot)
                .filter(job -> job.kind() == JobKind.WATCH_FOR_FLOWER && job.due() != Due.TODAY)
                .isPresent();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aJobStandsAsItsDayAndItsDeadlineSay(long seed) {
        Outlook outlook = outlook(seed);
        LocalDate today = outlook.day();
        assertThat(pots(outlook))
                .flatExtracting(pot -> pot.next().stream().toList())
                .allSatisfy(job -> {
                    boolean isPast =
                            job.deadline().filter(by -> today.isAfter(by.day())).isPresent();
                    boolean isToCome = job.on().isAfter(today);
                    switch (job.due()) {
                        case LATE -> assertThat(isPast).isTrue();
                        case READY, SOON, LATER ->
                            assertThat(isToCome || job.kind() == JobKind.POT_UP).isTrue();
                        case TODAY -> assertThat(isToCome).isFalse();
                    }
                    assertThat(job.due() == Due.SOON)
                            .isEqualTo(isToCome
                                    && job.due() != Due.LATE
                                    && job.due() != Due.READY
                                    && !(job.due() == Due.LATER)
                                    && !job.on().isAfter(today.plusDays(Today.SOON_DAYS)));
                });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void stagesToComeLieAheadAndInOrder(long seed) {
        Outlook outlook = outlook(seed);
        assertThat(pots(outlook)).allSatisfy(pot -> {
            assertThat(pot.ahead()).extracting(ahead -> ahead.window().likely()).isSorted();
            assertThat(pot.ahead()).extracting(Ahead::stage).isSorted().doesNotHaveDuplicates();
            assertThat(pot.ahead())
                    .allSatisfy(ahead -> assertThat(ahead.window().likely()).isAfterOrEqualTo(outlook.day()));
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void linesHaveNoGapAndWhatHappenedComesFirst(long seed) {
        Outlook outlook = outlook(seed);
        LocalDate tomorrow = outlook.day().plusDays(1);
        assertThat(outlook.lines(outlook.today().season())).allSatisfy(line -> {
            List<Phase> phases = line.phases();
            for (int i = 1; i < phases.size(); i++) {
                assertThat(phases.get(i).days().start())
                        .isEqualTo(phases.get(i - 1).days().endExclusive());
            }
            assertThat(phases).allSatisfy(phase -> {
                assertThat(phase.days().isEmpty()).isFalse();
                assertThat(
                                phase.happened()
                                        ? !phase.days().endExclusive().isAfter(tomorrow)
                                        : !phase.days().start().isBefore(tomorrow))
                        .isTrue();
            });
        });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void everyFigureIsWorkedOutAgainFromWhatWentIn(long seed) {
        Outlook outlook = outlook(seed);
        assertThat(pots(outlook))
                .flatExtracting(pot -> outlook.whys(pot.life().pot().id()))
                .allSatisfy(why -> assertThat(why.recomputed()).isEqualTo(why.result()));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void kindsWithoutColdAreNeverDueIntoIt(long seed) {
        assertThat(pots(outlook(seed)))
                .filteredOn(pot -> !pot.figures().needsCold())
                .allSatisfy(pot -> {
                    assertThat(pot.next().map(Job.OfPots::kind)).isNotEqualTo(Optional.of(JobKind.INTO_COLD));
                    assertThat(pot.ahead()).extracting(Ahead::stage).doesNotContain(Stage.COLD);
                    assertThat(pot.useBy()).isEmpty();
                });
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theSillHasEachDayOnce(long seed) {
        Outlook outlook = outlook(seed);
        Sill sill = outlook.sill(outlook.today().season());
        for (List<DaySpan> spans : List.of(sill.happened(), sill.foretold())) {
            for (int i = 1; i < spans.size(); i++) {
                assertThat(spans.get(i).start()).isAfter(spans.get(i - 1).endExclusive());
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void whatIsDoneIsNotAskedForAgain(long seed) {
        Winter winter = RandomWinter.of(seed);
        String on = RandomWinter.today(seed);
        Outlook before = winter.on(on);
        List<PotNow> asked =
                pots(before).stream().filter(pot -> pot.next().isPresent()).toList();
        asked.forEach(pot ->
                carryOut(winter.then(pot.life().pot().label()), on, pot.next().orElseThrow()));
        Outlook after = winter.on(on);
        assertThat(asked)
                .allSatisfy(pot ->
                        assertThat(dueKind(after.pot(pot.life().pot().id()))).isNotEqualTo(kind(pot)));
    }

    /** The next job; a plant is fed again, but not on the day it was fed. */
    private static Optional<JobKind> dueKind(PotNow pot) {
        return pot.next()
                .filter(job -> job.kind() != JobKind.FEED || job.due() == Due.TODAY)
                .map(Job.OfPots::kind);
    }

    private static Optional<JobKind> kind(PotNow pot) {
        return pot.next().map(Job.OfPots::kind);
    }

    private static void carryOut(Winter winter, String on, Job.OfPots job) {
        switch (job.kind()) {
            case POT_UP -> winter.potted(on);
            case INTO_COLD ->
                winter.moved(on, job.route().to().map(winter::name).orElse("cellar"));
            case BRING_IN -> winter.moved(on, job.route().stage() == Stage.COOL_ROOM ? "stair window" : "kitchen sill");
            case MOVE_TO_WARMTH -> winter.moved(on, "kitchen sill");
            case WATCH_FOR_FLOWER -> winter.flowered(on);
            case KEEP_COOL_IN_BLOOM -> winter.moved(on, "stair window");
            case PAST_BLOOM -> winter.pastBloom(on);
            case WRITE_OUTCOME -> winter.outcome(on, 3);
            case AFTERCARE -> winter.closed(on, End.FINISHED);
            case FEED -> winter.cared(on, Care.FED);
            case PUT_OUTDOORS -> winter.cared(on, Care.OUTDOORS);
            case TAKE_INDOORS -> winter.cared(on, Care.BROUGHT_IN);
            case START_REST -> winter.cared(on, Care.RESTED);
            case WAKE -> winter.cared(on, Care.WOKEN);
            case REPOT -> winter.cared(on, Care.REPOTTED);
            case CHECK, DAILY_CARE, DIG_TRENCH, POTS_IN, COVER_TRENCH, LIFT_POTS ->
                throw new AssertionError("a job of a place: " + job);
        }
    }
}
