// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Day;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Roots;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Length;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Winter.Look;

/** The history of one pot, read up to a day. */
class PotLifeTest {
    private final Winter winter = winter().place("cellar", Sort.CELLAR)
            .place("fridge", Sort.FRIDGE)
            .place("frame", Sort.COLD_FRAME)
            .cold("15 oct", "1 mar")
            .place("stair window", Sort.COOL_ROOM)
            .place("sill", Sort.WARM_SILL)
            .pot("T1", "Tuesday Coat", "tulip");

    private PotLife on(String today) {
        return winter.on(today).pot(winter.id("T1")).life();
    }

    private Day day(String told) {
        return Day.on(winter.day(told));
    }

    private LocalDate date(String told) {
        return winter.day(told);
    }

    private Phase happened(Stage stage, String place, String from, String endExclusive) {
        return new Phase(stage, Optional.of(winter.placeId(place)), DaySpan.of(date(from), date(endExclusive)), true);
    }

    @Test
    void aPotWaits() {
        assertThat(on("1 sep").standing()).isEqualTo(new Standing.Waiting());
        assertThat(on("1 sep").isGrowing()).isFalse();
        assertThat(on("1 sep").phases()).isEmpty();
    }

    @Test
    void aPottedPotThatNobodyPutAnywhereStandsSomewhere() {
        winter.potted("1 oct");
        assertThat(on("3 oct").standing()).isEqualTo(new Standing.Potted(day("1 oct")));
        assertThat(on("3 oct").stage()).isEqualTo(Stage.WAITING);
        assertThat(on("3 oct").phases())
                .containsExactly(
                        new Phase(Stage.WAITING, Optional.empty(), DaySpan.of(date("1 oct"), date("4 oct")), true));
        assertThat(on("3 oct").isGrowing()).isTrue();
    }

    @Test
    void itGoesFromStageToStage() {
        winter.potted("1 oct", "cellar")
                .moved("10 jan", "stair window")
                .moved("15 jan", "sill")
                .flowered("1 feb");
        winter.pastBloom("10 feb").closed("20 feb", End.FINISHED);
        assertThat(on("30 sep").standing()).isEqualTo(new Standing.Waiting());
        assertThat(on("9 jan").standing()).isEqualTo(new Standing.InCold(day("1 oct")));
        assertThat(on("10 jan").standing()).isEqualTo(new Standing.InCoolRoom(day("10 jan")));
        assertThat(on("15 jan").standing()).isEqualTo(new Standing.InWarmRoom(day("15 jan")));
        assertThat(on("1 feb").standing()).isEqualTo(new Standing.InBloom(day("1 feb")));
        assertThat(on("10 feb").standing()).isEqualTo(new Standing.AfterBloom(day("10 feb")));
        assertThat(on("21 feb").standing()).isEqualTo(new Standing.Done(End.FINISHED, day("20 feb"), ""));
        assertThat(on("21 feb").stands()).isEmpty();
        assertThat(on("21 feb").isGrowing()).isFalse();
        assertThat(on("21 feb").phases())
                .containsExactly(
                        happened(Stage.COLD, "cellar", "1 oct", "10 jan"),
                        happened(Stage.COOL_ROOM, "stair window", "10 jan", "15 jan"),
                        happened(Stage.WARM_ROOM, "sill", "15 jan", "1 feb"),
                        happened(Stage.IN_BLOOM, "sill", "1 feb", "10 feb"),
                        happened(Stage.AFTER_BLOOM, "sill", "10 feb", "20 feb"));
    }

    @Test
    void anotherColdPlaceIsStillTheCold() {
        winter.potted("1 oct", "cellar").moved("1 nov", "fridge");
        assertThat(on("2 nov").standing()).isEqualTo(new Standing.InCold(day("1 oct")));
        assertThat(on("2 nov").stands()).contains(new Stay(winter.placeId("fridge"), day("1 nov")));
        assertThat(on("2 nov").phases()).hasSize(2);
    }

    @Test
    void aMoveToWhereItStandsChangesNothing() {
        winter.potted("1 oct", "cellar").moved("1 nov", "cellar");
        assertThat(on("2 nov").stands()).contains(new Stay(winter.placeId("cellar"), day("1 oct")));
    }

    @Test
    void aFlowerDoesNotUnhappen() {
        winter.potted("1 oct", "cellar")
                .moved("10 jan", "sill")
                .flowered("1 feb")
                .moved("3 feb", "stair window");
        assertThat(on("4 feb").standing()).isEqualTo(new Standing.InBloom(day("1 feb")));
        assertThat(on("4 feb").stands().orElseThrow().place()).isEqualTo(winter.placeId("stair window"));
        winter.pastBloom("10 feb").moved("11 feb", "cellar").flowered("12 feb");
        assertThat(on("13 feb").standing()).isEqualTo(new Standing.AfterBloom(day("10 feb")));
        assertThat(on("13 feb").cold().daysIn()).isEqualTo(101);
    }

    @Test
    void aMoveMayTellOfTheBloom() {
        winter.potted("1 oct", "cellar")
                .moved("1 feb", "sill", Stage.IN_BLOOM)
                .moved("9 feb", "sill", Stage.AFTER_BLOOM);
        assertThat(on("1 feb").bloom().pot().firstFlower()).contains(day("1 feb"));
        assertThat(on("9 feb").bloom().pot().pastBloom()).contains(day("9 feb"));
        winter.moved("12 feb", "sill", Stage.DONE);
        assertThat(on("12 feb").standing()).isEqualTo(new Standing.Done(End.FINISHED, day("12 feb"), ""));
    }

    @Test
    void aMoveTellsNothingNewOfABloomThatIsWrittenAlready() {
        winter.potted("1 oct", "cellar")
                .moved("10 jan", "sill")
                .flowered("1 feb")
                .moved("3 feb", "sill", Stage.IN_BLOOM);
        assertThat(on("4 feb").bloom().pot().firstFlower()).contains(day("1 feb"));
        winter.pastBloom("8 feb").moved("9 feb", "sill", Stage.AFTER_BLOOM);
        assertThat(on("9 feb").bloom().pot().pastBloom()).contains(day("8 feb"));
    }

    @Test
    void whatIsDoneStaysDone() {
        winter.potted("1 oct", "cellar").closed("1 nov", End.BROKEN).moved("2 nov", "sill");
        assertThat(on("3 nov").standing()).isEqualTo(new Standing.Done(End.BROKEN, day("1 nov"), ""));
        assertThat(on("3 nov").phases()).containsExactly(happened(Stage.COLD, "cellar", "1 oct", "1 nov"));
    }

    @Test
    void itIsPottedOnce() {
        winter.potted("1 oct", "cellar").potted("5 oct");
        assertThat(on("6 oct").potted()).contains(day("1 oct"));
    }

    @Test
    void aDayOnlyAboutKnownIsKeptSo() {
        winter.potted("~1 oct", "cellar").moved("10 jan", "sill");
        assertThat(on("11 jan").uncertain()).containsExactlyInAnyOrder(Stage.WAITING, Stage.COLD);
        winter.moved("12 jan", "cellar");
        assertThat(on("12 jan").uncertain()).containsExactly(Stage.WAITING);
    }

    @Test
    void theCountOfColdStartsWhereItIsCold() {
        winter.potted("20 sep", "frame");
        assertThat(on("14 oct").cold())
                .extracting(ColdTime::began, ColdTime::count, ColdTime::reached, ColdTime::dryDays)
                .containsExactly(Optional.empty(), ColdCount.assumed(24, 0), List.of(), Optional.empty());
        assertThat(on("15 oct").cold().began()).isEmpty();
        assertThat(on("25 oct").cold())
                .extracting(ColdTime::began, ColdTime::count, ColdTime::reached, ColdTime::dryDays)
                .containsExactly(Optional.of(date("15 oct")), ColdCount.assumed(35, 10), List.of(), Optional.empty());
    }

    @Test
    void aGapInTheColdIsLeftOut() {
        winter.potted("1 nov", "cellar").moved("11 nov", "sill").moved("21 nov", "fridge");
        assertThat(on("1 dec").cold())
                .extracting(ColdTime::began, ColdTime::count, ColdTime::reached, ColdTime::dryDays)
                .containsExactly(Optional.of(date("1 nov")), ColdCount.assumed(20, 20), List.of(), Optional.empty());
    }

    @Test
    void coldBeforePottingDoesNotCount() {
        winter.moved("1 oct", "cellar").potted("11 oct");
        assertThat(on("21 oct").cold().daysIn()).isEqualTo(10);
    }

    @Test
    void aPotWhosePottingNobodyWroteIsTakenForPotted() {
        winter.moved("1 oct", "cellar");
        assertThat(on("21 oct").cold().daysIn()).isEqualTo(20);
        assertThat(on("21 oct").isGrowing()).isTrue();
    }

    @Test
    void ofSeveralPlantingsTheLeastDryColdIsSure() {
        winter.cooled(6);
        assertThat(on("1 oct").cold().dryDays()).contains(42);
        Winter mixed = winter().mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth");
        assertThat(mixed.on("1 oct").pot(mixed.id("T1")).life().cold().dryDays())
                .isEmpty();
        assertThat(mixed.cooled(3).on("1 oct").pot(mixed.id("T1")).life().cold().dryDays())
                .contains(21);
    }

    @Test
    void whatWasSeenLastIsKnown() {
        winter.potted("1 oct", "cellar").saw("1 dec", Look.roots().shoot(2)).checked("10 dec");
        winter.saw("20 dec", Look.ofShoot(5).growth(Growth.BUDS))
                .saw("22 dec", Look.ofShoot(6).growth(Growth.COLOUR));
        Seen seen = on("23 dec").seen();
        assertThat(seen.roots()).contains(new Noted<>(Roots.SHOWING, day("1 dec")));
        assertThat(seen.shoot()).contains(new Noted<>(Length.ofCentimetres(6), day("22 dec")));
        assertThat(seen.moisture().orElseThrow().day()).isEqualTo(day("10 dec"));
        assertThat(seen.growth()).containsExactlyInAnyOrder(Growth.BUDS, Growth.COLOUR);
        assertThat(seen.lastLook()).contains(day("22 dec"));
        assertThat(on("30 nov").seen()).isEqualTo(Seen.NOTHING);
    }

    @Test
    void careNotesAndAnswersAreRemembered() {
        winter.potted("1 oct", "cellar").cared("2 oct", Care.HOODED).jotted("3 oct", "flat sides to the rim");
        winter.putOff("4 oct", JobKind.BRING_IN, "9 oct").leftOut("5 oct", JobKind.AFTERCARE);
        PotLife life = on("6 oct");
        assertThat(life.cares()).containsExactly(new Noted<>(Care.HOODED, day("2 oct")));
        assertThat(life.notes()).containsExactly(new Noted<>("flat sides to the rim", day("3 oct")));
        assertThat(life.answers().delay(JobKind.BRING_IN)).contains(new Job.Delay(date("9 oct"), "no room"));
        assertThat(life.answers().isLeftOut(JobKind.AFTERCARE)).isTrue();
    }

    @Test
    void aHoodStakesAndAnOuterPotStayOnUntilTheyAreTakenOff() {
        winter.potted("1 oct", "cellar").cared("2 oct", Care.HOODED).cared("3 oct", Care.STAKED);
        winter.cared("4 oct", Care.UNHOODED).cared("5 oct", Care.INTO_OUTER_POT).cared("6 oct", Care.STAKED);
        winter.cared("7 oct", Care.FED);
        assertThat(on("2 oct").dress()).containsExactly(new Noted<>(Care.HOODED, day("2 oct")));
        assertThat(on("7 oct").dress())
                .containsExactly(
                        new Noted<>(Care.STAKED, day("6 oct")), new Noted<>(Care.INTO_OUTER_POT, day("5 oct")));
        winter.closed("8 oct", End.GIVEN);
        assertThat(on("8 oct").dress()).isEmpty();
    }

    @Test
    void aPotIsInTheDisplayItCameIntoLast() {
        winter.potted("1 oct", "cellar").displayed("2 oct", "hall table").displayed("3 oct", "Porch bench");
        assertThat(on("2 oct").display()).contains(new Noted<>("hall table", day("2 oct")));
        Outlook outlook = winter.on("3 oct");
        assertThat(outlook.displays()).containsExactly("Porch bench");
        assertThat(outlook.inDisplay("porch bench")).hasSize(1);
        assertThat(outlook.inDisplay("hall table")).isEmpty();
        winter.displayed("4 oct", "");
        assertThat(on("4 oct").display()).isEmpty();
        winter.displayed("5 oct", "hall table").closed("6 oct", End.SOLD);
        assertThat(on("6 oct").display()).isEmpty();
    }

    @Test
    void theLastAnswerToAJobCounts() {
        winter.potted("1 oct", "cellar").leftOut("2 oct", JobKind.BRING_IN).putOff("3 oct", JobKind.BRING_IN, "9 oct");
        assertThat(on("3 oct").answers().isLeftOut(JobKind.BRING_IN)).isFalse();
        winter.leftOut("4 oct", JobKind.BRING_IN);
        assertThat(on("4 oct").answers().delay(JobKind.BRING_IN)).isEmpty();
    }

    @Test
    void aMixedPotBloomsFromItsFirstToItsLast() {
        Winter mixed = winter().place("sill", Sort.WARM_SILL)
                .mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth")
                .potted("1 oct", "sill")
                .flowered("1 feb", BloomPoint.FIRST_FLOWER, "Inkwell")
                .flowered("5 feb", BloomPoint.FIRST_FLOWER, "Marrow Lane")
                .flowered("9 feb", BloomPoint.PAST_BLOOM, "Inkwell");
        PotLife life = mixed.on("10 feb").pot(mixed.id("T1")).life();
        assertThat(life.standing()).isEqualTo(new Standing.InBloom(Day.on(mixed.day("1 feb"))));
        assertThat(life.bloom().varieties()).hasSize(2);
        assertThat(life.bloom().pot().pastBloom()).isEmpty();
        mixed.flowered("14 feb", BloomPoint.PAST_BLOOM, "Marrow Lane");
        assertThat(mixed.on("15 feb").pot(mixed.id("T1")).life().standing())
                .isEqualTo(new Standing.AfterBloom(Day.on(mixed.day("14 feb"))));
    }

    @Test
    void fullBloomIsBloomToo() {
        Winter full = winter().mixed("T1", "Marrow Lane", "tulip", "Inkwell", "hyacinth")
                .potted("1 oct")
                .flowered("1 feb", BloomPoint.FULL_BLOOM, "Inkwell");
        PotLife life = full.on("2 feb").pot(full.id("T1")).life();
        assertThat(life.stage()).isEqualTo(Stage.IN_BLOOM);
        assertThat(life.bloom().pot().fullBloom()).contains(Day.on(full.day("1 feb")));
        assertThat(life.bloom().pot().firstFlower()).isEmpty();
    }

    @Test
    void everyStandingAnswersToItsOwnCase() {
        Day since = day("1 oct");
        List<Standing> all = List.of(
                new Standing.Waiting(),
                new Standing.Potted(since),
                new Standing.InCold(since),
                new Standing.InCoolRoom(since),
                new Standing.InWarmRoom(since),
                new Standing.InBloom(since),
                new Standing.AfterBloom(since),
                new Standing.Done(End.SOLD, since, "at the fair"));
        assertThat(all).hasSameSizeAs(Standing.class.getPermittedSubclasses());
        assertThat(all)
                .allSatisfy(standing -> assertThat(standing.fold(new NameOfCase()))
                        .isEqualTo(standing.getClass().getSimpleName()));
        assertThat(all)
                .extracting(Standing::begun)
                .filteredOn(Optional::isPresent)
                .hasSize(7)
                .containsOnly(Optional.of(since));
    }

    private static final class NameOfCase implements Standing.Cases<String> {
        @Override
        public String waiting(Standing.Waiting standing) {
            return "Waiting";
        }

        @Override
        public String potted(Standing.Potted standing) {
            return "Potted";
        }

        @Override
        public String inCold(Standing.InCold standing) {
            return "InCold";
        }

        @Override
        public String inCoolRoom(Standing.InCoolRoom standing) {
            return "InCoolRoom";
        }

        @Override
        public String inWarmRoom(Standing.InWarmRoom standing) {
            return "InWarmRoom";
        }

        @Override
        public String inBloom(Standing.InBloom standing) {
            return "InBloom";
        }

        @Override
        public String afterBloom(Standing.AfterBloom standing) {
            return "AfterBloom";
        }

        @Override
        public String done(Standing.Done standing) {
            return "Done";
        }
    }
}
