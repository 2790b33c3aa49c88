// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.FigureName;
import sillbook.model.JobKind;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Warning;
import sillbook.season.Winter.Look;

/** What the grower should know of a pot. */
class ConcernTest {
    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .place("frame", Sort.COLD_FRAME)
            .cold("15 oct", "1 dec")
            .place("stair", Sort.COOL_ROOM)
            .place("sill", Sort.WARM_SILL)
            .pot("T1", "Tuesday Coat", "tulip");

    private List<String> codes(String today) {
        return concerns(today).stream().map(Concern::code).toList();
    }

    private List<Concern> concerns(String today) {
        return house.on(today).pot(house.id("T1")).concerns();
    }

    @Test
    void aPotThatDoesWellHasNone() {
        house.potted("1 oct", "cellar");
        assertThat(codes("20 dec")).isEmpty();
        house.moved("14 jan", "stair");
        assertThat(codes("15 jan")).isEmpty();
    }

    /**
     * Tulips potted in early October, outside until the end of November, then brought in: they grew and did not open
     * (New Mexico State University, 24 December 2005).
     */
    @Test
    void eightWeeksOfColdAreTooFew() {
        house.potted("4 oct", "cellar").moved("29 nov", "stair");
        assertThat(concerns("30 nov"))
                .singleElement()
                .isInstanceOfSatisfying(
                        Concern.OfSchedule.class,
                        concern -> assertThat(concern.warning())
                                .isInstanceOfSatisfying(
                                        Warning.TooLittleCold.class,
                                        warning ->
                                                assertThat(warning.pottedDays()).isEqualTo(56)));
        house.flowered("10 jan");
        assertThat(codes("11 jan")).as("it flowered all the same").isEmpty();
    }

    /**
     * Of 15 weeks at 5 C ten may be dry with no loss; with twelve dry fewer flowered (Oklahoma State University,
     * HortScience 29(5):487d, 1994).
     */
    @ParameterizedTest
    @CsvSource({"10, 5, ", "12, 3, too-little-cold", "12, 5, dry-credit"})
    void dryColdIsTakenOffUpToTenWeeks(double dryWeeks, int pottedWeeks, String code) {
        house.own(Kind.of("tulip"), FigureName.COLD, 15, 15, 17)
                .cooled(dryWeeks)
                .potted("1 nov", "cellar");
        house.moved(told(house, pottedWeeks), "stair");
        List<String> codes = codes("20 dec");
        assertThat(codes.contains(code)).isEqualTo(code != null);
        assertThat(codes.isEmpty()).isEqualTo(code == null);
    }

    private static String told(Winter winter, int weeks) {
        var day = winter.day("1 nov").plusWeeks(weeks);
        return day.getDayOfMonth() + " " + day.getMonth().name().substring(0, 3);
    }

    @Test
    void tooMuchColdIsToldOfAndALimitWithIt() {
        house.potted("1 oct", "cellar").moved("29 jan", "stair");
        assertThat(codes("30 jan")).containsExactly("too-much-cold");
    }

    @Test
    void noColdAtAllIsToldOf() {
        house.potted("1 oct", "sill").leftOut("2 oct", JobKind.INTO_COLD);
        assertThat(codes("3 oct")).containsExactlyInAnyOrder("no-potted-cold", "too-little-cold");
    }

    @Test
    void aColdThatEndsBeforeItsWeeksAreHad() {
        house.potted("1 oct", "frame");
        assertThat(concerns("20 oct"))
                .containsExactly(new Concern.ColdEnds(house.placeId("frame"), house.day("1 dec"), 58));
        assertThat(concerns("5 oct"))
                .containsExactly(
                        new Concern.NotCold(house.placeId("frame"), house.day("15 oct")),
                        new Concern.ColdEnds(house.placeId("frame"), house.day("1 dec"), 58));
        house.cold("15 oct", "1 mar");
    }

    @Test
    void aColdThatOutlastsItsWeeksIsNoConcern() {
        Winter frame = winter().place("frame", Sort.COLD_FRAME)
                .cold("15 oct", "28 jan")
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("15 oct", "frame");
        assertThat(frame.on("20 oct").pot(frame.id("T1")).concerns()).isEmpty();
        assertThat(frame.on("10 feb").pot(frame.id("T1")).concerns())
                .as("its weeks are had, and use-by is to come")
                .isEmpty();
    }

    @Test
    void aPotPastItsUseBy() {
        house.potted("1 oct", "cellar");
        assertThat(codes("28 jan")).isEmpty();
        assertThat(concerns("29 jan")).containsExactly(new Concern.PastUseBy(house.day("28 jan")));
    }

    @Test
    void aTallShootBeforeItsWeeks() {
        house.potted("1 oct", "cellar").saw("20 dec", Look.ofShoot(9));
        assertThat(concerns("21 dec"))
                .containsExactly(new Concern.TooWarmHere(
                        Optional.of(house.placeId("cellar")), Length.ofCentimetres(9), 24, Optional.empty()));
    }

    /** Three weeks after 14 January is 4 February, two weeks 28 January. */
    @ParameterizedTest
    @CsvSource({
        "5 feb, ",
        "4 feb, ",
        "3 feb, late",
        "28 jan, late",
        "27 jan, too-late",
        "1 mar, ",
        "1 jun, not-reachable"
    })
    void aWishIsJudged(String wish, String code) {
        house.potted("1 oct", "cellar").saw("10 jan", Look.roots()).wish(wish, "T1");
        assertThat(codes("14 jan"))
                .isEqualTo(Optional.ofNullable(code).map(List::of).orElse(List.of()));
    }

    @Test
    void aWishPastWhatTheColdAllowsIsReachedOnlyWithTooMuchOfIt() {
        house.potted("1 oct", "cellar").saw("10 jan", Look.roots()).wish("12 mar", "T1");
        WishNow wish = house.on("14 jan").pot(house.id("T1")).wish().orElseThrow();
        assertThat(wish.on()).contains(house.day("19 feb"));
        assertThat(house.on("14 jan").pot(house.id("T1")).next().orElseThrow().on())
                .isEqualTo(house.day("28 jan"));
    }

    @Test
    void aPotInTheWarmRoomIsJudgedByWhatHasBegun() {
        house.potted("1 oct", "cellar").moved("14 jan", "sill").wish("27 jan", "T1");
        assertThat(codes("20 jan")).containsExactly("too-late");
        house.wish("28 jan", "T1");
        assertThat(codes("28 jan")).containsExactly("late");
    }

    @Test
    void whatWaitsIsJudgedByTheDayItWouldBePotted() {
        house.wish("1 mar", "T1");
        assertThat(codes("26 oct")).isEmpty();
        assertThat(codes("27 oct")).containsExactly("late");
        assertThat(codes("24 nov")).containsExactly("too-late");
    }

    @Test
    void whatIsPastBloomHasNoneAnyMore() {
        house.place("larder", Sort.OTHER)
                .beside(Hazard.FOOD)
                .potted("1 oct", "larder")
                .flowered("1 feb");
        assertThat(codes("2 feb")).containsExactly("beside-hazard");
        house.pastBloom("9 feb");
        assertThat(codes("10 feb")).isEmpty();
    }

    @Test
    void everyConcernAnswersToItsCaseAndHasACodeOfItsOwn() {
        var place = house.placeId("cellar");
        List<Concern> all = List.of(
                new Concern.OfSchedule(new Warning.NoPottedCold()),
                new Concern.TooWarmHere(Optional.of(place), Length.ofCentimetres(9), 3, Optional.empty()),
                new Concern.NotCold(place, house.day("1 nov")),
                new Concern.ColdEnds(place, house.day("1 dec"), 3),
                new Concern.ColdToRoot(place, Temperature.ofCelsius(1)),
                new Concern.HeldBack(place, 14, true, 91, 77, house.day("1 feb")),
                new Concern.WarmSpell(
                        place,
                        DaySpan.of(house.day("1 dec"), house.day("3 dec")),
                        Temperature.ofCelsius(13),
                        Temperature.ofCelsius(15)),
                new Concern.Frozen(
                        place, Temperature.ofCelsius(-4), house.day("1 dec"), house.day("1 dec"), Optional.empty()),
                new Concern.PastUseBy(house.day("1 dec")),
                new Concern.BesideHazard(place, Hazard.FRUIT),
                new Concern.AssumedFigures(Kind.of("moonflower")));
        assertThat(all).hasSameSizeAs(Concern.class.getPermittedSubclasses());
        assertThat(all)
                .extracting(Concern::code)
                .containsExactly(
                        "no-potted-cold",
                        "too-warm-here",
                        "not-cold",
                        "cold-ends",
                        "cold-to-root",
                        "held-back",
                        "warm-spell",
                        "frost",
                        "past-use-by",
                        "beside-hazard",
                        "assumed-figures");
        assertThat(all)
                .allSatisfy(concern -> assertThat(concern.fold(new NameOfCase()))
                        .isEqualTo(concern.getClass().getSimpleName()));
    }

    private static final class NameOfCase implements Concern.Cases<String> {
        @Override
        public String ofSchedule(Concern.OfSchedule concern) {
            return "OfSchedule";
        }

        @Override
        public String tooWarmHere(Concern.TooWarmHere concern) {
            return "TooWarmHere";
        }

        @Override
        public String notCold(Concern.NotCold concern) {
            return "NotCold";
        }

        @Override
        public String coldEnds(Concern.ColdEnds concern) {
            return "ColdEnds";
        }

        @Override
        public String coldToRoot(Concern.ColdToRoot concern) {
            return "ColdToRoot";
        }

        @Override
        public String heldBack(Concern.HeldBack concern) {
            return "HeldBack";
        }

        @Override
        public String warmSpell(Concern.WarmSpell concern) {
            return "WarmSpell";
        }

        @Override
        public String frozen(Concern.Frozen concern) {
            return "Frozen";
        }

        @Override
        public String pastUseBy(Concern.PastUseBy concern) {
            return "PastUseBy";
        }

        @Override
        public String besideHazard(Concern.BesideHazard concern) {
            return "BesideHazard";
        }

        @Override
        public String assumedFigures(Concern.AssumedFigures concern) {
            return "AssumedFigures";
        }
    }

    /** Roots grow fast at 48 F, less at 40 F and hardly at 33 F (Cornell University, bulb newsletter of June 2013). */
    @ParameterizedTest
    @CsvSource({"0, 1, true", "0, 4.5, false", "2, 9, false"})
    void firstWeeksNearFreezingAreSaidUntilRootsAreSeen(double low, double high, boolean isSaid) {
        Winter trench = winter().place("trench", Sort.TRENCH)
                .usually(low, high)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 nov", "trench");

        assertThat(said(trench, "12 jan")).isEqualTo(isSaid);
        assertThat(said(trench.saw("10 jan", Look.roots()), "12 jan")).isFalse();
    }

    @Test
    void whatWasReadInTheFirstWeeksSpeaksBeforeWhatIsUsual() {
        Winter trench = winter().place("trench", Sort.TRENCH)
                .usually(2, 9)
                .read("1 nov", "12 nov", -1, 1)
                .read("12 nov", "1 dec", 2, 8)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("20 oct", "trench");

        assertThat(said(trench, "12 jan"))
                .as("the first weeks were over by the second reading")
                .isTrue();
        assertThat(said(trench.read("20 oct", "1 nov", 3, 6), "12 jan")).isFalse();
    }

    /** One day warm enough is enough, whatever a thermometer says of the others. */
    @ParameterizedTest
    @CsvSource({"1, true", "6, false"})
    void theDaysOfALoggerSpeakToo(double warmest, boolean isSaid) {
        Winter trench = winter().place("trench", Sort.TRENCH)
                .usually(2, 9)
                .logged("20 oct", "30 oct", 1)
                .logged("31 oct", "31 oct", warmest)
                .logged("3 nov", "11 jan", 8)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("20 oct", "trench");

        assertThat(said(trench, "12 jan")).isEqualTo(isSaid);
    }

    private static boolean said(Winter winter, String today) {
        return winter.on(today).pot(winter.id("T1")).concerns().stream().anyMatch(Concern.ColdToRoot.class::isInstance);
    }
}
