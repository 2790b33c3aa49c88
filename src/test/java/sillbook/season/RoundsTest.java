// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Band;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.model.Temperature;
import sillbook.reckon.dates.Window;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.Today.Attention;
import sillbook.season.Winter.Look;

/** Looks at pots are asked for by place; a cellar every ten days. */
class RoundsTest {
    private final Winter house = winter().place("trench", Sort.TRENCH)
            .place("sill", Sort.WARM_SILL)
            .place("porch", Sort.PORCH)
            .place("stair", Sort.COOL_ROOM)
            .every(3)
            .place("cellar", Sort.CELLAR);

    private Winter pots() {
        return house.pots("T1-T3", "Tuesday Coat", "tulip").potted("1 oct", "cellar");
    }

    private Optional<Job.Round> round(String today, String place) {
        return house.on(today).places().stream()
                .filter(there -> there.place().id().equals(house.placeId(place)))
                .flatMap(there -> there.round().stream())
                .findFirst();
    }

    private LocalDate due(String today) {
        return round(today, "cellar").orElseThrow().on();
    }

    private LocalDate day(String told) {
        return house.day(told);
    }

    @Test
    void theFirstRoundFallsDueItsIntervalAfterThePotsCame() {
        pots();
        assertThat(round("5 oct", "cellar"))
                .contains(new Job.Round(
                        house.placeId("cellar"),
                        house.ids("T1-T3"),
                        List.of(),
                        10,
                        day("1 oct"),
                        new Window(day("11 oct"), day("11 oct"), day("21 oct")),
                        day("11 oct"),
                        Due.SOON,
                        Optional.empty(),
                        List.of(),
                        false));
        assertThat(house.on("10 oct").today().checks()).isEmpty();
        assertThat(house.on("11 oct").today().checks()).hasSize(1);
    }

    @Test
    void itIsAnsweredOnceEveryPotThereWasLookedAt() {
        pots().then("T1").checked("11 oct").then("T2").saw("12 oct", Look.noRoots());
        assertThat(due("13 oct")).isEqualTo(day("11 oct"));
        house.then("T3").checked("13 oct");
        assertThat(due("13 oct")).isEqualTo(day("21 oct"));
    }

    @Test
    void aPotThatCameLaterWasSeenThen() {
        pots().checked("11 oct").pot("T4", "Tuesday Coat", "tulip").potted("15 oct", "cellar");
        assertThat(due("16 oct")).isEqualTo(day("21 oct"));
    }

    @Test
    void aPotThatLeftIsNoLongerAskedFor() {
        pots().then("T1 T2").checked("11 oct").then("T3").closed("12 oct", End.BROKEN);
        assertThat(due("13 oct")).isEqualTo(day("21 oct"));
        assertThat(round("13 oct", "cellar").orElseThrow().pots()).isEqualTo(house.ids("T1 T2"));
    }

    @Test
    void aTrenchAnEmptyPlaceAndOneOfDailyCareHaveNone() {
        house.pot("S1", "Thimble Post", "snowdrop").potted("1 oct", "trench");
        house.pot("P1", "Linen Parade", "paperwhite").potted("1 oct", "sill");
        assertThat(round("1 dec", "trench")).isEmpty();
        assertThat(round("1 dec", "sill")).isEmpty();
        assertThat(round("1 dec", "cellar")).isEmpty();
    }

    @Test
    void aTrenchIsAskedForOnceATestPotWasLifted() {
        house.pots("S1-S4", "Thimble Post", "snowdrop").potted("1 oct", "trench");
        house.then("S1").cared("1 dec", Care.FED);
        assertThat(round("1 dec", "trench")).isEmpty();
        house.then("S1").cared("2 dec", Care.LIFTED);
        assertThat(round("2 dec", "trench").orElseThrow().pots()).isEqualTo(house.ids("S1-S4"));
        assertThat(house.on("2 dec").today().checks()).hasSize(1);
        house.then("S1-S4").checked("2 dec");
        assertThat(round("3 dec", "trench").orElseThrow().on()).isEqualTo(day("12 dec"));
        house.place("bank", Sort.TRENCH).then("S1").moved("4 dec", "bank");
        assertThat(round("4 dec", "bank")).as("lifted where it stood before").isEmpty();
    }

    @Test
    void noOtherPlaceThatIsNeverAskedForIs() {
        house.place("loft", Sort.OTHER).every(0);
        house.pot("S1", "Thimble Post", "snowdrop").potted("1 oct", "loft").cared("2 dec", Care.LIFTED);
        assertThat(round("2 dec", "loft")).isEmpty();
    }

    @Test
    void aRoomThatIsNotLookedAtDailyHasItsOwn() {
        house.pot("P1", "Linen Parade", "paperwhite").potted("1 oct", "stair");
        assertThat(round("2 oct", "stair").orElseThrow().on()).isEqualTo(day("4 oct"));
        assertThat(house.on("2 oct").today().dailyCare()).isEmpty();
    }

    @Test
    void aColdPlaceLookedAtDailyIsARoundToo() {
        pots().place("loft", Sort.OTHER).every(1).then("T1").moved("3 oct", "loft");
        assertThat(round("4 oct", "loft").orElseThrow().on()).isEqualTo(day("4 oct"));
    }

    @Test
    void itCanBePutOff() {
        pots().roundPutOff("11 oct", JobKind.CHECK, "14 oct");
        assertThat(due("12 oct")).isEqualTo(day("14 oct"));
        assertThat(house.on("12 oct").today().checks()).isEmpty();
        assertThat(house.on("14 oct").today().checks())
                .singleElement()
                .satisfies(round -> assertThat(round.putOff()).contains(new Job.Delay(day("14 oct"), "")));
        assertThat(due("10 oct")).as("before that was said").isEqualTo(day("11 oct"));
    }

    @Test
    void puttingOffWhatWasThenMadeSaysNothing() {
        pots().roundPutOff("11 oct", JobKind.CHECK, "14 oct").checked("12 oct");
        assertThat(due("13 oct")).isEqualTo(day("22 oct"));
        assertThat(round("13 oct", "cellar").orElseThrow().putOff()).isEmpty();
    }

    @Test
    void leftOutItCountsAsMade() {
        pots().roundLeftOut("11 oct", JobKind.CHECK);
        assertThat(due("12 oct")).isEqualTo(day("21 oct"));
        assertThat(due("10 oct")).isEqualTo(day("11 oct"));
        house.checked("15 oct");
        assertThat(due("16 oct")).isEqualTo(day("25 oct"));
    }

    @Test
    void theLongestDueComesFirstThenTheFullest() {
        house.place("loft", Sort.OTHER)
                .place("fridge", Sort.FRIDGE)
                .pots("T1-T3", "Tuesday Coat", "tulip")
                .potted("3 oct", "cellar");
        house.pot("T4", "Tuesday Coat", "tulip")
                .potted("3 oct", "loft")
                .pot("T5", "Tuesday Coat", "tulip")
                .potted("26 sep", "fridge");
        assertThat(house.on("15 oct").today().checks())
                .extracting(Job.Round::place)
                .containsExactly(house.placeId("fridge"), house.placeId("cellar"), house.placeId("loft"));
    }

    @Test
    void whyItFallsOnItsDay() {
        pots().then("T1").checked("5 oct").roundLeftOut("3 oct", JobKind.CHECK);
        Outlook outlook = house.on("6 oct");
        RoundDue why = outlook.why(outlook.places().get(4).place()).orElseThrow();
        assertThat(why.looks()).containsEntry(house.id("T1"), day("5 oct")).containsEntry(house.id("T2"), day("1 oct"));
        assertThat(why.leftOut()).contains(day("3 oct"));
        assertThat(why.recomputed()).isEqualTo(why.result()).isEqualTo(day("13 oct"));
        assertThat(outlook.why(outlook.places().get(0).place())).isEmpty();
    }

    // A look for roots

    @Test
    void aRoundOfTheDaySettlesWhatWaitsForALook() {
        pots().checked("4 jan");
        Today today = house.on("14 jan").today();
        assertThat(today.due()).isEmpty();
        assertThat(today.checks())
                .singleElement()
                .satisfies(round -> assertThat(round.settles()).isEqualTo(house.ids("T1-T3")));
        house.checked("14 jan");
        assertThat(house.on("14 jan").today().checks()).isEmpty();
        assertThat(house.on("14 jan").today().due())
                .singleElement()
                .satisfies(job -> assertThat(job.pots()).isEqualTo(house.ids("T1-T3")));
    }

    @Test
    void whereNoRoundIsDueItIsAskedForByThePot() {
        house.pot("T9", "Tuesday Coat", "tulip").potted("1 oct", "trench");
        pots().checked("10 jan");
        assertThat(house.on("14 jan").today().due())
                .flatExtracting(Job.OfPots::pots)
                .containsExactlyElementsOf(house.ids("T1 T2 T3 T9"));
    }

    @Test
    void aPotThatIsLateIsNotHiddenInARound() {
        pots().checked("4 jan");
        Today today = house.on("29 jan").today();
        assertThat(today.late()).hasSize(1);
        assertThat(today.checks())
                .singleElement()
                .satisfies(round -> assertThat(round.settles()).isEmpty());
    }

    // The daily care

    @Test
    void whatStandsOutOfTheColdIsLookedAfterDaily() {
        pots().then("T1").moved("14 jan", "porch").then("T2").moved("14 jan", "sill");
        assertThat(house.on("15 jan").today().dailyCare())
                .contains(new Job.DailyCare(
                        house.ids("T1 T2"), 2, List.of(house.placeId("sill"), house.placeId("porch")), day("15 jan")));
        house.then("T1").cared("15 jan", Care.TURNED);
        assertThat(house.on("15 jan").today().dailyCare())
                .contains(new Job.DailyCare(house.ids("T2"), 2, List.of(house.placeId("sill")), day("15 jan")));
        house.then("T2").checked("15 jan");
        assertThat(house.on("15 jan").today().dailyCare()).isEmpty();
        assertThat(house.on("16 jan").today().dailyCare().orElseThrow().pots()).hasSize(2);
    }

    @Test
    void aNoteIsNoCare() {
        pots().then("T1").moved("14 jan", "porch").jotted("15 jan", "pale");
        assertThat(house.on("15 jan").today().dailyCare()).isPresent();
    }

    @Test
    void itCanBeSwitchedOff() {
        pots().then("T1").moved("14 jan", "porch");
        house.withoutDailyCare();
        assertThat(house.on("15 jan").today().dailyCare()).isEmpty();
    }

    @Test
    void orLeftOutAndPutOffAtAPlace() {
        house.place("parlour", Sort.WARM_SILL);
        pots().then("T1").moved("14 jan", "parlour").roundLeftOut("15 jan", JobKind.DAILY_CARE);
        assertThat(house.on("15 jan").today().dailyCare()).isEmpty();
        assertThat(house.on("16 jan").today().dailyCare()).isPresent();
        house.roundPutOff("17 jan", JobKind.DAILY_CARE, "20 jan");
        assertThat(house.on("19 jan").today().dailyCare()).isEmpty();
        assertThat(house.on("20 jan").today().dailyCare()).isPresent();
    }

    // Places wanting attention

    private List<Attention> attention(String today) {
        return house.on(today).today().places();
    }

    @Test
    void theGravestIsSaidFirstWhereverItIs() {
        Winter told = Winter.winter()
                .place("cellar", Sort.CELLAR)
                .every(10)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .place("fridge", Sort.FRIDGE)
                .every(0)
                .logged("1 dec", "12 jan", 11)
                .pot("T2", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .place("porch", Sort.PORCH)
                .every(0)
                .logged("1 dec", "12 jan", 4)
                .logged("10 jan", "10 jan", -9, 1)
                .pot("T3", "Marrow Lane", "tulip")
                .potted("1 oct", "porch");
        assertThat(told.on("12 jan").today().places())
                .extracting(Attention::code)
                .containsExactly("frozen", "out-of-band", "unchecked");
    }

    @Test
    void nothingIsSaidOfAPlaceWhereAllIsWell() {
        pots();
        assertThat(attention("21 oct")).isEmpty();
    }

    @Test
    void aPlaceNobodyLookedAtForTwiceItsInterval() {
        pots();
        assertThat(attention("22 oct"))
                .containsExactly(new Attention.Unchecked(house.placeId("cellar"), day("1 oct"), 10));
    }

    @Test
    void aPlaceThatIsTooFull() {
        house.room(2);
        pots();
        assertThat(attention("5 oct")).containsExactly(new Attention.OverRoom(house.placeId("cellar"), 3, 2));
        house.then("T1").closed("5 oct", End.GIVEN);
        assertThat(attention("5 oct")).isEmpty();
    }

    @Test
    void foodAndFruitBesidePots() {
        house.beside(Hazard.FOOD, Hazard.FRUIT, Hazard.MICE);
        assertThat(attention("5 oct")).isEmpty();
        pots();
        assertThat(attention("5 oct"))
                .containsExactly(
                        new Attention.BesideHazard(house.placeId("cellar"), 3, 0, Hazard.FRUIT),
                        new Attention.BesideHazard(house.placeId("cellar"), 3, 0, Hazard.FOOD));
        assertThat(house.on("5 oct").pot(house.id("T1")).concerns())
                .containsExactly(
                        new Concern.BesideHazard(house.placeId("cellar"), Hazard.FRUIT),
                        new Concern.BesideHazard(house.placeId("cellar"), Hazard.FOOD));
    }

    @Test
    void aPlaceWhoseColdIsOverWhilePotsStandInIt() {
        house.every(0).cold("10 oct", "1 dec");
        pots();
        assertThat(attention("5 oct")).as("it has not begun yet").isEmpty();
        assertThat(attention("30 nov")).isEmpty();
        assertThat(attention("1 dec")).containsExactly(new Attention.NotCold(house.placeId("cellar"), 3));
        house.moved("2 dec", "cellar", Stage.COOL_ROOM);
        assertThat(attention("2 dec")).isEmpty();
    }

    private WaitingBulbs waiting() {
        house.pot("W1", "Tuesday Coat", "tulip").bought("1 oct", "cellar");
        return house.on("5 oct").dryAt(house.placeId("cellar")).get(0);
    }

    @Test
    void everyAttentionNamesItsPlaceAndAnswersToItsCase() {
        Attention.Cases<String> names = new Attention.Cases<>() {
            @Override
            public String overRoom(Attention.OverRoom attention) {
                return "OverRoom";
            }

            @Override
            public String hazard(Attention.BesideHazard attention) {
                return "BesideHazard";
            }

            @Override
            public String unchecked(Attention.Unchecked attention) {
                return "Unchecked";
            }

            @Override
            public String notCold(Attention.NotCold attention) {
                return "NotCold";
            }

            @Override
            public String dryLong(Attention.DryLong attention) {
                return "DryLong";
            }

            @Override
            public String outOfBand(Attention.OutOfBand attention) {
                return "OutOfBand";
            }

            @Override
            public String leavingBand(Attention.LeavingBand attention) {
                return "LeavingBand";
            }

            @Override
            public String unread(Attention.Unread attention) {
                return "Unread";
            }

            @Override
            public String frost(Attention.FrostThere attention) {
                return "FrostThere";
            }

            @Override
            public String trial(Attention.OnTrial attention) {
                return "OnTrial";
            }
        };
        Band band = Band.ofCelsius(2, 9);
        List<Attention> all = List.of(
                new Attention.OverRoom(house.placeId("cellar"), 3, 2),
                new Attention.BesideHazard(house.placeId("cellar"), 3, 0, Hazard.FOOD),
                new Attention.Unchecked(house.placeId("cellar"), day("1 oct"), 10),
                new Attention.NotCold(house.placeId("cellar"), 3),
                new Attention.DryLong(house.placeId("cellar"), waiting(), day("5 dec")),
                new Attention.OutOfBand(
                        house.placeId("cellar"),
                        new PlaceClimate.Strayed(Side.OVER, day("1 oct"), 24, Optional.empty()),
                        band,
                        Optional.empty()),
                new Attention.LeavingBand(
                        house.placeId("cellar"), new PlaceClimate.Drift(Side.OVER, 0.5, day("1 oct")), band),
                new Attention.Unread(house.placeId("cellar"), day("1 oct"), 12),
                new Attention.FrostThere(
                        house.placeId("cellar"),
                        3,
                        Temperature.ofCelsius(-1),
                        day("1 oct"),
                        day("1 oct"),
                        Optional.empty()),
                new Attention.OnTrial(house.placeId("cellar"), new PlaceClimate.Trial(day("1 oct"), 3, 3), band));
        assertThat(all).hasSameSizeAs(Attention.class.getPermittedSubclasses()).allSatisfy(attention -> {
            assertThat(attention.fold(names)).isEqualTo(attention.getClass().getSimpleName());
            assertThat(attention.place()).isEqualTo(house.placeId("cellar"));
        });
    }
}
