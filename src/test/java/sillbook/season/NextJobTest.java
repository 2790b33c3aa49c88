// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.Cause;
import sillbook.model.Failure;
import sillbook.model.Findings.Growth;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.model.Pot.Way;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;
import sillbook.season.Winter.Look;

/** The one next job of a pot, from its potting to its aftercare. A tulip's weeks of cold are 12, 15 and 17. */
class NextJobTest {
    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .usually(6, 11)
            .place("trench", Sort.TRENCH)
            .cold("15 oct", "1 apr")
            .place("stair window", Sort.COOL_ROOM)
            .place("sill", Sort.WARM_SILL);

    private Winter tulip() {
        return house.pot("T1", "Tuesday Coat", "tulip");
    }

    /** Cold enough on 14 January, use by 28 January. */
    private Winter tulipInCold() {
        return tulip().potted("1 oct", "cellar");
    }

    private Optional<Job.OfPots> next(String today) {
        return house.on(today).pot(house.id("T1")).next();
    }

    private Job.OfPots job(String today) {
        return next(today).orElseThrow();
    }

    private LocalDate day(String told) {
        return house.day(told);
    }

    private void isDue(String today, JobKind kind, Due due, String on) {
        Job.OfPots job = job(today);
        assertThat(job.kind()).isEqualTo(kind);
        assertThat(job.due()).isEqualTo(due);
        assertThat(job.on()).isEqualTo(day(on));
    }

    // Potting

    @Test
    void aPotIsPottedUpInAutumn() {
        tulip();
        isDue("1 aug", JobKind.POT_UP, Due.LATER, "14 oct");
        isDue("30 sep", JobKind.POT_UP, Due.SOON, "14 oct");
        isDue("14 oct", JobKind.POT_UP, Due.TODAY, "14 oct");
        isDue("20 dec", JobKind.POT_UP, Due.TODAY, "20 dec");
        assertThat(job("1 aug").route().stage()).isEqualTo(Stage.COLD);
        assertThat(job("1 aug").route().to().map(Destination::place)).contains(house.placeId("cellar"));
        assertThat(job("1 aug").deadline()).isEmpty();
    }

    @Test
    void aPotOfARowIsPottedOnItsDayAlsoBeforeTheUsualOne() {
        house.pot("T1", "Linen Parade", "paperwhite").putOff("1 sep", JobKind.POT_UP, "20 oct");
        isDue("14 oct", JobKind.POT_UP, Due.SOON, "20 oct");
        isDue("20 oct", JobKind.POT_UP, Due.TODAY, "20 oct");
        isDue("25 oct", JobKind.POT_UP, Due.TODAY, "20 oct");
        assertThat(house.on("2 sep").pot(house.id("T1")).ahead())
                .as("what follows is reckoned from that day, and nothing lies before it")
                .isNotEmpty()
                .allSatisfy(ahead -> assertThat(ahead.window().earliest()).isAfterOrEqualTo(day("20 oct")))
                .first()
                .satisfies(ahead -> assertThat(ahead.window()).isEqualTo(Window.on(day("20 oct"))));
    }

    static Stream<Arguments> warmKindsInEveryWay() {
        return Handbook.standard().kinds().stream()
                .filter(kind -> !kind.needsCold())
                .flatMap(kind ->
                        Stream.of(Way.values()).map(way -> arguments(kind.kind().name(), way)));
    }

    @ParameterizedTest
    @MethodSource("warmKindsInEveryWay")
    void whatNeedsNoColdIsNeverDueIntoItInAnyWayOfGrowing(String kind, Way way) {
        house.pot("T1", "Linen Parade", kind).grown(way);
        for (int days = 0; days < 300; days++) {
            String today = told(days);
            if (days == 120) {
                house.then("T1").potted(today, "cellar");
            } else if (days == 140) {
                house.then("T1").moved(today, "stair window");
            } else if (days == 150) {
                house.then("T1").moved(today, "sill");
            } else if (days == 165) {
                house.then("T1").flowered(today);
            } else if (days == 180) {
                house.then("T1").pastBloom(today);
            }
            assertThat(next(today).map(Job.OfPots::kind)).as(today).isNotEqualTo(Optional.of(JobKind.INTO_COLD));
        }
    }

    private String told(int days) {
        LocalDate day = house.day("1 jul").plusDays(days);
        return day.getDayOfMonth() + " " + day.getMonth().name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    @Test
    void aKindWithoutColdGoesToARoom() {
        house.pot("T1", "Linen Parade", "paperwhite");
        isDue("14 oct", JobKind.POT_UP, Due.LATER, "18 nov");
        assertThat(job("14 oct").route().stage()).isEqualTo(Stage.COOL_ROOM);
        house.pot("T1", "Umbrella Street", "amaryllis");
        assertThat(job("14 oct").route().stage()).isEqualTo(Stage.WARM_ROOM);
    }

    @Test
    void bulbsThatHaveNotComeAreNotDue() {
        tulip().ordered();
        assertThat(job("20 nov").due()).isEqualTo(Due.LATER);
        house.wish("10 mar", "T1");
        assertThat(job("20 nov").due()).isEqualTo(Due.LATER);
    }

    /** Three weeks after fifteen: 1 April less 126 days is 26 November. */
    @Test
    void aWishNamesTheDayOfPotting() {
        tulip().wish("1 apr", "T1");
        isDue("20 nov", JobKind.POT_UP, Due.SOON, "26 nov");
        isDue("26 nov", JobKind.POT_UP, Due.TODAY, "26 nov");
        isDue("27 nov", JobKind.POT_UP, Due.LATE, "27 nov");
        assertThat(job("27 nov").daysLate(day("27 nov"))).isEqualTo(1);
        assertThat(job("20 nov").window()).isEqualTo(new Window(day("5 nov"), day("26 nov"), day("24 dec")));
    }

    @Test
    void ofSeveralWishedDaysTheFirstIsAimedAtAndTheLastIsTheDeadline() {
        tulip().wish("1 apr", "5 apr", "T1");
        isDue("26 nov", JobKind.POT_UP, Due.TODAY, "26 nov");
        isDue("30 nov", JobKind.POT_UP, Due.TODAY, "30 nov");
        isDue("1 dec", JobKind.POT_UP, Due.LATE, "1 dec");
    }

    // Into the cold

    @Test
    void aPottedPotStandingOutsideIsDueIntoTheCold() {
        tulip().potted("1 oct");
        isDue("3 oct", JobKind.INTO_COLD, Due.TODAY, "3 oct");
        assertThat(job("3 oct").window()).isEqualTo(new Window(day("1 oct"), day("3 oct"), day("3 oct")));
    }

    @ParameterizedTest
    @CsvSource({"stair window", "sill"})
    void soIsOneInARoom(String room) {
        tulip().potted("1 oct", room);
        isDue("3 oct", JobKind.INTO_COLD, Due.TODAY, "3 oct");
    }

    @Test
    void itIsLateOnceItsWishIsInDanger() {
        tulip().potted("1 oct").wish("10 feb", "T1");
        isDue("7 oct", JobKind.INTO_COLD, Due.TODAY, "7 oct");
        isDue("8 oct", JobKind.INTO_COLD, Due.LATE, "8 oct");
    }

    @Test
    void aPlaceThatIsNotColdYetIsWaitedFor() {
        tulip().potted("1 oct", "trench");
        isDue("3 oct", JobKind.BRING_IN, Due.LATER, "28 jan");
        assertThat(house.on("3 oct").pot(house.id("T1")).concerns())
                .containsExactly(new Concern.NotCold(house.placeId("trench"), day("15 oct")));
    }

    @Test
    void aPotThatGrowsAllTheSameIsNotSentBack() {
        tulip().potted("1 oct", "sill").saw("5 nov", Look.roots().growth(Growth.BUDS));
        assertThat(job("6 nov").kind()).isEqualTo(JobKind.WATCH_FOR_FLOWER);
    }

    @Test
    void coldItHadOnceIsEnoughNotToSendItBack() {
        tulipInCold().moved("3 oct", "stair window");
        assertThat(job("4 oct").kind()).isEqualTo(JobKind.MOVE_TO_WARMTH);
    }

    @Test
    void leftOutItGoesOnAsItStands() {
        tulip().potted("1 oct", "stair window").leftOut("2 oct", JobKind.INTO_COLD);
        assertThat(job("3 oct").kind()).isEqualTo(JobKind.MOVE_TO_WARMTH);
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct").leftOut("2 oct", JobKind.INTO_COLD);
        assertThat(job("3 oct").kind()).isEqualTo(JobKind.BRING_IN);
    }

    @Test
    void aTallShootBeforeItsWeeksGoesToAColderPlace() {
        tulipInCold().saw("20 dec", Look.ofShoot(9));
        assertThat(job("21 dec").kind()).as("no colder place is known").isEqualTo(JobKind.BRING_IN);
        house.place("fridge", Sort.FRIDGE)
                .usually(2, 5)
                .place("porch", Sort.OTHER)
                .usually(4, 7);
        isDue("21 dec", JobKind.INTO_COLD, Due.TODAY, "21 dec");
        assertThat(job("21 dec").route().to().map(Destination::place)).contains(house.placeId("fridge"));
        assertThat(house.on("21 dec").pot(house.id("T1")).concerns())
                .singleElement()
                .isInstanceOfSatisfying(Concern.TooWarmHere.class, concern -> {
                    assertThat(concern.daysShort()).isEqualTo(24);
                    assertThat(concern.colder().map(Destination::place)).contains(house.placeId("fridge"));
                });
    }

    @ParameterizedTest
    @CsvSource({"6, 11", "2, 12"})
    void aPlaceNoColderIsNoHelp(double low, double high) {
        tulipInCold().saw("20 dec", Look.ofShoot(9)).place("loft", Sort.OTHER).usually(low, high);
        assertThat(job("21 dec").kind()).isEqualTo(JobKind.BRING_IN);
    }

    @Test
    void noColderPlaceIsKnownOfOneWhoseTemperatureIsNot() {
        house.place("loft", Sort.OTHER).place("fridge", Sort.FRIDGE).usually(2, 5);
        tulip().potted("1 oct", "loft").saw("20 dec", Look.ofShoot(9));
        assertThat(job("21 dec").kind()).isEqualTo(JobKind.BRING_IN);
    }

    // Coming in

    @Test
    void beforeItsWeeksItIsDueOnTheDayTheyAreHad() {
        tulipInCold();
        isDue("20 dec", JobKind.BRING_IN, Due.LATER, "14 jan");
        isDue("31 dec", JobKind.BRING_IN, Due.SOON, "14 jan");
        assertThat(job("31 dec").deadline()).contains(new Deadline.UseBy(day("28 jan")));
    }

    @Test
    void rootedItIsReadyAndMayWaitToItsUseBy() {
        tulipInCold().saw("10 jan", Look.roots());
        isDue("13 jan", JobKind.BRING_IN, Due.SOON, "14 jan");
        isDue("14 jan", JobKind.BRING_IN, Due.READY, "28 jan");
        isDue("27 jan", JobKind.BRING_IN, Due.READY, "28 jan");
        isDue("28 jan", JobKind.BRING_IN, Due.TODAY, "28 jan");
        assertThat(job("29 jan").due()).isEqualTo(Due.LATE);
        assertThat(job("31 jan").daysLate(day("31 jan"))).isEqualTo(3);
    }

    @Test
    void whatNobodyLookedAtIsCheckedFirst() {
        tulipInCold();
        isDue("13 jan", JobKind.BRING_IN, Due.SOON, "14 jan");
        isDue("14 jan", JobKind.BRING_IN, Due.TODAY, "14 jan");
        assertThat(job("14 jan").readiness().orElseThrow().verdict()).isEqualTo(Verdict.CHECK_FIRST);
        assertThat(job("29 jan").due()).isEqualTo(Due.LATE);
    }

    @Test
    void withoutRootsItIsLookedAtAgainInTwoWeeks() {
        tulipInCold().saw("12 jan", Look.noRoots());
        isDue("14 jan", JobKind.BRING_IN, Due.SOON, "26 jan");
        isDue("26 jan", JobKind.BRING_IN, Due.TODAY, "14 jan");
        house.saw("27 jan", Look.noRoots());
        assertThat(job("28 jan").due()).isEqualTo(Due.SOON);
        assertThat(job("29 jan").due()).as("past its use-by").isEqualTo(Due.LATE);
    }

    @Test
    void aWishDoesNotHurryWhatIsNotRooted() {
        tulipInCold().saw("12 jan", Look.noRoots()).wish("3 feb", "T1");
        assertThat(job("15 jan").due()).isEqualTo(Due.SOON);
        assertThat(job("15 jan").deadline()).contains(new Deadline.UseBy(day("28 jan")));
    }

    @Test
    void aWishNeverMakesAPotLateThatHasNotHadItsWeeks() {
        tulipInCold().saw("1 jan", Look.roots()).wish("20 jan", "T1");
        assertThat(job("5 jan").due()).isEqualTo(Due.SOON);
        assertThat(house.on("5 jan").pot(house.id("T1")).concerns())
                .extracting(Concern::code)
                .containsExactly("too-late");
    }

    /** Three weeks before 12 February is 22 January, after its 15 weeks and before its 17. */
    @Test
    void aWishNamesTheDayOfComingIn() {
        tulipInCold().saw("10 jan", Look.roots()).wish("12 feb", "T1");
        isDue("14 jan", JobKind.BRING_IN, Due.READY, "22 jan");
        isDue("22 jan", JobKind.BRING_IN, Due.TODAY, "22 jan");
        assertThat(job("23 jan").due()).isEqualTo(Due.LATE);
        assertThat(job("23 jan").daysLate(day("23 jan"))).isEqualTo(1);
        assertThat(job("12 feb").due()).isEqualTo(Due.LATE);
        assertThat(house.on("14 jan").pot(house.id("T1")).ahead().get(0).restsOn())
                .containsExactly(Ahead.Ground.COLD, Ahead.Ground.ROOTS, Ahead.Ground.WISH);
    }

    @Test
    void aWishBeyondTheUseByWaitsNoLongerThanThat() {
        tulipInCold().saw("10 jan", Look.roots()).wish("1 mar", "T1");
        isDue("14 jan", JobKind.BRING_IN, Due.READY, "28 jan");
        assertThat(job("14 jan").deadline()).contains(new Deadline.UseBy(day("28 jan")));
    }

    @Test
    void aWishThatIsPastMakesNothingLate() {
        tulipInCold().saw("10 jan", Look.roots()).wish("20 jan", "T1");
        assertThat(job("20 jan").due()).isEqualTo(Due.LATE);
        isDue("21 jan", JobKind.BRING_IN, Due.READY, "28 jan");
    }

    /** Hyacinths that flower two weeks after the cold may come in a week later than tulips that take three. */
    @Test
    void ofAMixedPotTheWishIsForItsKind() {
        Kind hyacinth = Kind.of("hyacinth");
        house.own(hyacinth, FigureName.AFTER_COLD, 2, 2, 2).mixed("T1", "Tuesday Coat", "tulip", "Inkwell", "hyacinth");
        house.potted("1 oct", "cellar").wishFor(hyacinth, "20 mar", "T1");
        assertThat(house.on("1 nov").pot(house.id("T1")).wish().orElseThrow().by())
                .contains(day("6 mar"));
        house.wishFor(Kind.of("tulip"), "10 mar", "T1");
        assertThat(house.on("1 nov").pot(house.id("T1")).wish().orElseThrow().by())
                .contains(day("17 feb"));
        house.wish("8 mar", "T1");
        assertThat(house.on("1 nov").pot(house.id("T1")).wish().orElseThrow().by())
                .contains(day("15 feb"));
    }

    @Test
    void theNearestWishCounts() {
        tulipInCold()
                .saw("10 jan", Look.roots())
                .wish("12 feb", "T1")
                .wish("10 feb", "T1")
                .wish("8 feb", "T1");
        house.pot("T2", "Tuesday Coat", "tulip").wish("1 feb", "T2");
        isDue("14 jan", JobKind.BRING_IN, Due.READY, "18 jan");
    }

    @Test
    void aKindWithoutColdComesInAtOnce() {
        house.pot("T1", "Linen Parade", "paperwhite").potted("18 nov");
        isDue("20 nov", JobKind.BRING_IN, Due.TODAY, "20 nov");
        assertThat(job("20 nov").route().stage()).isEqualTo(Stage.COOL_ROOM);
        house.moved("20 nov", "cellar");
        isDue("21 nov", JobKind.BRING_IN, Due.TODAY, "21 nov");
        assertThat(job("21 nov").readiness()).isEmpty();
        house.pot("T1", "Umbrella Street", "amaryllis").potted("18 nov");
        assertThat(job("20 nov").route().stage()).isEqualTo(Stage.WARM_ROOM);
    }

    // Rooms and flowers

    @Test
    void itMovesToWarmthAfterItsDaysInTheCoolRoom() {
        tulipInCold().moved("14 jan", "stair window");
        isDue("15 jan", JobKind.MOVE_TO_WARMTH, Due.SOON, "19 jan");
        isDue("19 jan", JobKind.MOVE_TO_WARMTH, Due.TODAY, "19 jan");
        isDue("30 jan", JobKind.MOVE_TO_WARMTH, Due.TODAY, "30 jan");
        assertThat(job("15 jan").route())
                .isEqualTo(new Route(
                        Optional.of(house.placeId("stair window")),
                        Optional.of(new Destination(house.placeId("sill"), Optional.empty())),
                        Stage.WARM_ROOM));
    }

    @Test
    void orAsSoonAsItIsTallEnough() {
        tulipInCold().moved("14 jan", "stair window").saw("16 jan", Look.ofShoot(9.9));
        isDue("16 jan", JobKind.MOVE_TO_WARMTH, Due.SOON, "19 jan");
        house.saw("16 jan", Look.ofShoot(10));
        isDue("16 jan", JobKind.MOVE_TO_WARMTH, Due.TODAY, "16 jan");
    }

    @Test
    void orAsSoonAsItsBudsAreSeen() {
        tulipInCold()
                .moved("14 jan", "stair window")
                .saw("16 jan", Look.ofShoot(5).growth(Growth.BUDS));
        isDue("16 jan", JobKind.MOVE_TO_WARMTH, Due.TODAY, "16 jan");
    }

    /** 16 days of warmth before 6 February begin on 21 January, when the cool room may be left at the latest. */
    @Test
    void aWishMayHoldItInTheCoolRoom() {
        tulipInCold()
                .moved("14 jan", "stair window")
                .saw("16 jan", Look.ofShoot(12))
                .wish("6 feb", "T1");
        isDue("16 jan", JobKind.MOVE_TO_WARMTH, Due.SOON, "21 jan");
        assertThat(job("22 jan").due()).isEqualTo(Due.LATE);
    }

    @Test
    void nothingIsLateBeforeItCanBeDone() {
        tulipInCold().moved("14 jan", "stair window").wish("30 jan", "T1");
        assertThat(job("17 jan").due()).isEqualTo(Due.SOON);
        assertThat(job("18 jan").due()).isEqualTo(Due.LATE);
    }

    @Test
    void aFlowerIsAskedForOnlyWhenItsWindowIsOver() {
        tulipInCold().moved("14 jan", "stair window").moved("19 jan", "sill");
        isDue("25 jan", JobKind.WATCH_FOR_FLOWER, Due.LATER, "11 feb");
        isDue("1 feb", JobKind.WATCH_FOR_FLOWER, Due.SOON, "11 feb");
        isDue("11 feb", JobKind.WATCH_FOR_FLOWER, Due.TODAY, "11 feb");
        isDue("20 feb", JobKind.WATCH_FOR_FLOWER, Due.TODAY, "20 feb");
    }

    @Test
    void leftOutTheNextThingFollows() {
        tulipInCold().moved("14 jan", "stair window").leftOut("15 jan", JobKind.MOVE_TO_WARMTH);
        assertThat(job("16 jan").kind()).isEqualTo(JobKind.WATCH_FOR_FLOWER);
        house.leftOut("15 jan", JobKind.WATCH_FOR_FLOWER);
        assertThat(next("16 jan")).isEmpty();
    }

    @Test
    void inBloomItWouldStandCooler() {
        tulipInCold().moved("14 jan", "sill").flowered("4 feb");
        isDue("5 feb", JobKind.KEEP_COOL_IN_BLOOM, Due.READY, "14 feb");
        assertThat(job("5 feb").route().to().map(Destination::place)).contains(house.placeId("stair window"));
        isDue("14 feb", JobKind.PAST_BLOOM, Due.SOON, "18 feb");
    }

    @Test
    void inFullBloomItIsAskedHowItIs() {
        tulipInCold().moved("14 jan", "stair window").flowered("4 feb");
        isDue("6 feb", JobKind.PAST_BLOOM, Due.SOON, "18 feb");
        isDue("7 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "7 feb");
        isDue("13 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "7 feb");
        isDue("14 feb", JobKind.PAST_BLOOM, Due.SOON, "18 feb");
        house.outcome("8 feb", 4);
        isDue("8 feb", JobKind.PAST_BLOOM, Due.SOON, "18 feb");
    }

    @Test
    void onceItIsWrittenToBeInFullBloomThatDayCounts() {
        tulipInCold()
                .moved("14 jan", "stair window")
                .flowered("4 feb")
                .flowered("5 feb", BloomPoint.FULL_BLOOM, "Tuesday Coat");
        isDue("5 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "5 feb");
    }

    @Test
    void aScorePutOffMakesRoomForWhatElseTheBloomAsksFor() {
        tulipInCold().moved("14 jan", "sill").flowered("4 feb").putOff("7 feb", JobKind.WRITE_OUTCOME, "10 feb");
        isDue("7 feb", JobKind.KEEP_COOL_IN_BLOOM, Due.READY, "14 feb");
        isDue("10 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "10 feb");
        house.leftOut("10 feb", JobKind.WRITE_OUTCOME);
        isDue("10 feb", JobKind.KEEP_COOL_IN_BLOOM, Due.READY, "14 feb");
        house.pastBloom("14 feb");
        assertThat(job("15 feb").kind()).as("it was left out once and for all").isEqualTo(JobKind.AFTERCARE);
    }

    @Test
    void howTallItGrewIsNoAnswer() {
        tulipInCold().moved("14 jan", "stair window").flowered("4 feb").outcomeWithoutScore("7 feb", Failure.NONE);
        isDue("8 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "7 feb");
        house.outcomeWithoutScore("8 feb", Failure.NONE.withCause(Optional.of(Cause.RUSHED)));
        isDue("8 feb", JobKind.PAST_BLOOM, Due.SOON, "18 feb");
    }

    @Test
    void ofAFailedPotAnythingIsAnAnswer() {
        tulipInCold().closed("1 feb", End.FAILED).outcomeWithoutScore("2 feb", Failure.NONE);
        assertThat(next("3 feb")).isEmpty();
    }

    @Test
    void varietiesThatShareAPotAreScoredEachAtItsBest() {
        house.mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth")
                .potted("1 oct", "sill")
                .flowered("4 feb", BloomPoint.FIRST_FLOWER, "Inkwell")
                .flowered("6 feb", BloomPoint.FIRST_FLOWER, "Marrow Lane");
        isDue("7 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "7 feb");
        house.outcomeOf("Inkwell", "7 feb", 4);
        assertThat(job("8 feb").kind()).isNotEqualTo(JobKind.WRITE_OUTCOME);
        isDue("9 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "9 feb");
        house.outcomeOf("Marrow Lane", "9 feb", 2);
        assertThat(job("10 feb").kind()).isNotEqualTo(JobKind.WRITE_OUTCOME);
    }

    @Test
    void aScoreOfThePotAsAWholeAnswersForAllInIt() {
        house.mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth")
                .potted("1 oct", "sill")
                .flowered("4 feb", BloomPoint.FIRST_FLOWER, "Inkwell")
                .flowered("4 feb", BloomPoint.FIRST_FLOWER, "Marrow Lane")
                .outcome("7 feb", 3);
        assertThat(job("7 feb").kind()).isNotEqualTo(JobKind.WRITE_OUTCOME);
    }

    @Test
    void whatWasNotScoredInBloomIsAskedOnceMoreAfterIt() {
        tulipInCold().moved("14 jan", "stair window").flowered("4 feb").pastBloom("5 feb");
        isDue("6 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "5 feb");
        assertThat(job("6 feb").window()).isEqualTo(new Window(day("5 feb"), day("5 feb"), day("19 feb")));
    }

    @Test
    void butOnlyWhereACoolRoomHasRoom() {
        tulipInCold().moved("14 jan", "sill").flowered("4 feb");
        house.pot("T2", "Tuesday Coat", "tulip").potted("1 oct", "stair window").place("stair window", Sort.OTHER);
        Winter full = winter().place("cellar", Sort.CELLAR)
                .place("porch", Sort.COOL_ROOM)
                .room(0)
                .place("sill", Sort.WARM_SILL)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("14 jan", "sill")
                .flowered("4 feb");
        assertThat(full.on("5 feb").pot(full.id("T1")).next().orElseThrow().kind())
                .isEqualTo(JobKind.PAST_BLOOM);
    }

    @Test
    void pastBloomIsAskedOnTheUsualDayWhereThatIsKnown() {
        tulipInCold()
                .moved("14 jan", "stair window")
                .flowered("4 feb")
                .own(Kind.of("tulip"), FigureName.IN_BLOOM, 8, 10, 13);
        isDue("6 feb", JobKind.PAST_BLOOM, Due.SOON, "14 feb");
        isDue("14 feb", JobKind.PAST_BLOOM, Due.TODAY, "14 feb");
        isDue("20 feb", JobKind.PAST_BLOOM, Due.TODAY, "20 feb");
    }

    @Test
    void andOnTheLatestWhereItIsTakenForGranted() {
        tulipInCold().moved("14 jan", "stair window").flowered("4 feb");
        isDue("14 feb", JobKind.PAST_BLOOM, Due.SOON, "18 feb");
        isDue("18 feb", JobKind.PAST_BLOOM, Due.TODAY, "18 feb");
    }

    // The end

    @Test
    void theOutcomeIsAskedForAndThenTheAftercare() {
        tulipInCold().moved("14 jan", "sill").flowered("4 feb").pastBloom("14 feb");
        isDue("14 feb", JobKind.WRITE_OUTCOME, Due.TODAY, "14 feb");
        house.outcome("15 feb", 4);
        isDue("15 feb", JobKind.AFTERCARE, Due.LATER, "28 mar");
        house.cared("20 mar", Care.FED);
        assertThat(job("20 mar").kind()).isEqualTo(JobKind.AFTERCARE);
        house.cared("20 mar", Care.PLANTED_OUT);
        assertThat(next("20 mar")).isEmpty();
    }

    @Test
    void whatWasRepottedBeforeItBloomedStillNeedsItsAftercare() {
        tulipInCold()
                .cared("2 nov", Care.REPOTTED)
                .moved("14 jan", "sill")
                .pastBloom("14 feb")
                .outcome("15 feb", 2);
        assertThat(job("16 feb").kind()).isEqualTo(JobKind.AFTERCARE);
    }

    @Test
    void whatNeedsNoColdIsClearedWhenItIsPast() {
        house.pot("T1", "Linen Parade", "paperwhite")
                .potted("1 nov", "sill")
                .flowered("4 dec")
                .pastBloom("14 dec");
        house.leftOut("14 dec", JobKind.WRITE_OUTCOME);
        isDue("14 dec", JobKind.AFTERCARE, Due.TODAY, "14 dec");
    }

    @Test
    void aMixedPotIsToldOfWhenEachVarietyIs() {
        house.mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth")
                .potted("1 oct", "sill")
                .pastBloom("14 feb");
        house.outcomeOf("Marrow Lane", "15 feb", 3);
        assertThat(job("16 feb").kind()).isEqualTo(JobKind.WRITE_OUTCOME);
        house.outcomeOf("Inkwell", "15 feb", 3);
        assertThat(job("16 feb").kind()).isEqualTo(JobKind.AFTERCARE);
    }

    @ParameterizedTest
    @EnumSource
    void onlyAnEndThatTellsSomethingAsksForItsOutcome(End end) {
        tulipInCold().closed("1 feb", end);
        boolean tells = end == End.FINISHED || end == End.FAILED;
        assertThat(next("2 feb").map(Job.OfPots::kind))
                .isEqualTo(tells ? Optional.of(JobKind.WRITE_OUTCOME) : Optional.empty());
        house.outcome("2 feb", 1);
        assertThat(next("3 feb")).isEmpty();
    }

    // Put off

    @Test
    void whatWasPutOffIsNotDueBefore() {
        tulipInCold().saw("10 jan", Look.roots()).putOff("14 jan", JobKind.BRING_IN, "20 jan");
        isDue("15 jan", JobKind.BRING_IN, Due.SOON, "20 jan");
        assertThat(job("15 jan").putOff()).contains(new Job.Delay(day("20 jan"), "no room"));
        isDue("20 jan", JobKind.BRING_IN, Due.TODAY, "20 jan");
        isDue("22 jan", JobKind.BRING_IN, Due.TODAY, "20 jan");
    }

    @Test
    void anAnswerFromBeforeItStoodHereSaysNothing() {
        tulipInCold().saw("10 jan", Look.roots()).putOff("14 jan", JobKind.BRING_IN, "16 jan");
        house.moved("16 jan", "stair window").moved("17 jan", "cellar");
        assertThat(job("18 jan").due()).isEqualTo(Due.READY);
        assertThat(job("18 jan").putOff()).isEmpty();
    }

    @Test
    void notEvenPastItsDeadline() {
        tulipInCold().saw("10 jan", Look.roots()).putOff("27 jan", JobKind.BRING_IN, "2 feb");
        isDue("30 jan", JobKind.BRING_IN, Due.SOON, "2 feb");
        assertThat(job("2 feb").due()).isEqualTo(Due.LATE);
        assertThat(house.on("30 jan").pot(house.id("T1")).concerns())
                .containsExactly(new Concern.PastUseBy(day("28 jan")));
    }

    @Test
    void farEnoughItIsForLater() {
        tulip().potted("1 oct").putOff("2 oct", JobKind.INTO_COLD, "1 dec");
        isDue("3 oct", JobKind.INTO_COLD, Due.LATER, "1 dec");
    }

    // Where to

    @Test
    void thePlaceMostUsedByTheKindIsSuggested() {
        house.place("porch", Sort.COOL_ROOM)
                .pots("D1-D3", "Lantern Row", "daffodil")
                .potted("1 oct", "cellar")
                .then("D1 D2")
                .moved("4 jan", "porch")
                .then("D3")
                .moved("4 jan", "stair window");
        tulipInCold();
        assertThat(job("5 jan").route().to().map(Destination::place))
                .as("first")
                .contains(house.placeId("stair window"));
        house.pot("D9", "Lantern Row", "daffodil").potted("1 oct", "cellar");
        assertThat(house.on("5 jan")
                        .pot(house.id("D9"))
                        .next()
                        .orElseThrow()
                        .route()
                        .to())
                .contains(new Destination(house.placeId("porch"), Optional.empty()));
    }

    @Test
    void aFullPlaceIsNot() {
        Winter full = winter().place("cellar", Sort.CELLAR)
                .place("porch", Sort.COOL_ROOM)
                .room(1)
                .place("stair", Sort.COOL_ROOM)
                .room(2)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .pots("T2-T3", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .then("T2")
                .moved("4 jan", "porch")
                .then("T3")
                .moved("4 jan", "stair");
        Route route = full.on("5 jan").pot(full.id("T1")).next().orElseThrow().route();
        assertThat(route.to()).contains(new Destination(full.placeId("stair"), Optional.of(1)));
    }

    @Test
    void noColdPlaceIsSuggestedWhileItIsNotCold() {
        Winter frame = winter().place("frame", Sort.COLD_FRAME)
                .cold("1 nov", "1 mar")
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct");
        assertThat(frame.on("5 oct")
                        .pot(frame.id("T1"))
                        .next()
                        .orElseThrow()
                        .route()
                        .to())
                .isEmpty();
        assertThat(frame.on("5 nov")
                        .pot(frame.id("T1"))
                        .next()
                        .orElseThrow()
                        .route()
                        .to())
                .isPresent();
    }
}
