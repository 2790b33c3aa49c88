// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static sillbook.season.Winter.winter;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Cause;
import sillbook.model.Failure;
import sillbook.model.Failure.Roots;
import sillbook.model.Failure.Sign;
import sillbook.model.Findings;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Happening.End;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Pot.Way;
import sillbook.season.Suspect.Verdict;

/** What the journal says of each cause a failure could have. */
class SuspectTest {

    /** A trench, a fridge beside food, and a tulip that went from one to the other. */
    private static Winter trench() {
        return winter().place("fridge", Sort.FRIDGE)
                .place("stair window", Sort.COOL_ROOM)
                .place("parlour sill", Sort.WARM_SILL)
                .place("trench", Sort.TRENCH);
    }

    private static Winter tulip(Winter places) {
        return places.pot("T8", "Ninepenny Hat", "tulip")
                .potted("19 oct", "fridge")
                .moved("1 dec", "trench");
    }

    private static Suspect of(Cause cause, Winter winter) {
        return list(winter.closed("12 jan", End.FAILED)).stream()
                .filter(suspect -> suspect.cause() == cause)
                .findFirst()
                .orElseThrow();
    }

    private static List<Suspect> list(Winter winter) {
        return winter.on("12 jan").suspects(winter.id("T8"), Failure.NONE);
    }

    @Test
    void frostThatWasReadJottedAndSeenSpeaksForFrozen() {
        Winter told = tulip(trench().read("27 dec", "3 jan", -1.4, 4).noted("6 jan", "frost all week"))
                .saw("10 jan", new Winter.Look(Findings.NOTHING.with(Trouble.FROST)));

        Suspect frozen = of(Cause.FROZEN, told);

        assertThat(frozen.verdict()).isEqualTo(Verdict.SPEAKS_FOR);
        assertThat(frozen.clues())
                .extracting(clue -> clue.getClass().getSimpleName())
                .containsExactly("TooCold", "Jotted", "Found");
        assertThat(list(told).get(0)).isEqualTo(frozen);
    }

    @ParameterizedTest
    @CsvSource({"Hard FROST again, FROZEN", "icy rim, FROZEN", "a pear lay beside it, FRUIT_NEAR"})
    void theNoteOfACheckSpeaksToo(String note, Cause cause) {
        Winter told = tulip(trench()).saw("4 jan", new Winter.Look(Findings.ALL_WELL.withNote(note)));

        assertThat(of(cause, told).verdict()).isEqualTo(Verdict.SPEAKS_FOR);
    }

    @ParameterizedTest
    @CsvSource({
        "27 nov, 3 dec,  -3, 4,  CANNOT_BE_TOLD",
        "2 dec,  9 dec,  -3, 4,  SPEAKS_FOR",
        "2 dec,  9 dec,  0,  4,  NOTHING_SPEAKS_FOR",
        "2 dec,  9 dec,  -0.1, 4, SPEAKS_FOR",
        "2 dec,  14 jan, -3, 4,  CANNOT_BE_TOLD",
    })
    void onlyAReadingFromWhileItStoodThereSpeaks(String from, String to, double low, double high, Verdict verdict) {
        assertThat(of(Cause.FROZEN, tulip(trench().read(from, to, low, high))).verdict())
                .isEqualTo(verdict);
    }

    /** The trench is told last, so its logger is told before the pot: from the day after it came. */
    @Test
    void theDaysOfALoggerSpeakAndThoseOnEndTogether() {
        Winter told = tulip(trench().logged("1 nov", "1 dec", -5)
                .logged("2 dec", "4 dec", -1, 4)
                .logged("5 dec", "6 dec", -3, 10)
                .logged("7 dec", "20 dec", 2, 8)
                .logged("21 dec", "21 dec", -0.5, 3));

        Suspect frozen = of(Cause.FROZEN, told);
        assertThat(frozen.clues())
                .extracting(clue -> ((Clue.TooCold) clue).reading())
                .extracting(
                        StoodThrough::on,
                        read -> read.days().days(),
                        read -> read.between().low().celsius())
                .containsExactly(tuple(told.day("5 dec"), 5L, -3.0), tuple(told.day("21 dec"), 1L, -0.5));
        assertThat(of(Cause.WARM_SPELL, told).clues())
                .extracting(clue -> ((Clue.TooWarm) clue).reading().days().days())
                .containsExactly(2L);
    }

    @Test
    void aLoggerThatSawNothingWrongSaysSinceWhen() {
        Suspect frozen = of(Cause.FROZEN, tulip(trench().logged("20 nov", "11 jan", 2, 8)));

        assertThat(frozen.verdict()).isEqualTo(Verdict.NOTHING_SPEAKS_FOR);
        assertThat(frozen.clues())
                .extracting(clue -> ((Clue.ReadBetween) clue).since().getDayOfMonth())
                .containsExactly(2);
    }

    @ParameterizedTest
    @CsvSource({"9, NOTHING_SPEAKS_FOR", "9.1, SPEAKS_FOR"})
    void warmthOverTheBandOfTheColdSpeaksForAWarmSpell(double high, Verdict verdict) {
        assertThat(of(Cause.WARM_SPELL, tulip(trench().read("2 dec", "9 dec", 2, high)))
                        .verdict())
                .isEqualTo(verdict);
    }

    @Test
    void withoutAReadingNobodyCanTellWhetherItWasWarm() {
        assertThat(of(Cause.WARM_SPELL, tulip(trench())).verdict()).isEqualTo(Verdict.CANNOT_BE_TOLD);
    }

    @Test
    void aPotThatNeedsNoColdWasNotShortOfIt() {
        Winter told = trench().pot("T8", "Linen Parade", "paperwhite").potted("19 oct", "parlour sill");

        assertThat(of(Cause.COLD_SHORT, told).clues()).containsExactly(new Clue.NeedsNoCold());
        assertThat(of(Cause.WARM_SPELL, told).clues()).containsExactly(new Clue.NeedsNoCold());
        assertThat(of(Cause.RUSHED, told).clues()).containsExactly(new Clue.NeverBroughtIn());
    }

    @ParameterizedTest
    @CsvSource({"28 dec, SPEAKS_FOR, true", "13 jan, NOTHING_SPEAKS_FOR, false"})
    void coldIsShortOnlyOnceItIsOver(String out, Verdict verdict, boolean isOver) {
        Suspect cold = of(Cause.COLD_SHORT, tulip(trench()).moved(out, "stair window"));

        assertThat(cold.verdict()).isEqualTo(verdict);
        assertThat(cold.clues()).allMatch(clue -> clue instanceof Clue.WeeksIn in && in.isOver() == isOver);
    }

    @Test
    void coldThatWasLongEnoughSpeaksForNothing() {
        Winter told = trench().pot("T8", "Ninepenny Hat", "tulip")
                .potted("1 sep", "fridge")
                .moved("4 jan", "stair window");

        assertThat(of(Cause.COLD_SHORT, told).verdict()).isEqualTo(Verdict.NOTHING_SPEAKS_FOR);
    }

    @Test
    void aTrenchWhereNobodyLookedLeavesWetAndDryOpen() {
        Suspect dry = of(Cause.TOO_WET_OR_DRY, tulip(trench()).checked("20 nov"));

        assertThat(dry.verdict()).isEqualTo(Verdict.CANNOT_BE_TOLD);
        assertThat(dry.clues()).allMatch(Clue.NotChecked.class::isInstance);
    }

    @ParameterizedTest
    @CsvSource({"DRY, SPEAKS_FOR", "WET, SPEAKS_FOR", "MOIST, NOTHING_SPEAKS_FOR"})
    void checksTellOfWetAndDry(Moisture found, Verdict verdict) {
        Winter told = tulip(trench()).saw("4 jan", new Winter.Look(Findings.NOTHING.withMoisture(found)));

        assertThat(of(Cause.TOO_WET_OR_DRY, told).verdict()).isEqualTo(verdict);
    }

    @ParameterizedTest
    @CsvSource({"LOW, SPEAKS_FOR", "HIGH, SPEAKS_FOR", "RIGHT, NOTHING_SPEAKS_FOR"})
    void theWaterOfAGlassTellsOfWetAndDry(Water found, Verdict verdict) {
        Winter told = tulip(trench()).grown(Way.GLASS).saw("4 jan", new Winter.Look(Findings.NOTHING.withWater(found)));

        assertThat(of(Cause.TOO_WET_OR_DRY, told).verdict()).isEqualTo(verdict);
    }

    @Test
    void aPotThatWasNeverInTheColdAndNeverLookedAtLeavesItOpenToo() {
        Winter told = trench().pot("T8", "Linen Parade", "paperwhite").potted("19 oct", "parlour sill");

        assertThat(of(Cause.TOO_WET_OR_DRY, told).clues()).containsExactly(new Clue.FoundMoist(0));
    }

    @Test
    void fruitKeptThereAndFruitJottedSpeakForFruit() {
        Winter told = winter().place("stair window", Sort.COOL_ROOM)
                .place("trench", Sort.TRENCH)
                .place("fridge", Sort.FRIDGE)
                .beside(Hazard.FRUIT);
        Suspect fruit = of(Cause.FRUIT_NEAR, tulip(told).jotted("2 nov", "Apples moved out."));

        assertThat(fruit.clues())
                .extracting(clue -> clue.getClass().getSimpleName())
                .containsExactly("Beside", "Jotted");
        assertThat(of(Cause.FRUIT_NEAR, tulip(trench())).verdict()).isEqualTo(Verdict.NOTHING_SPEAKS_FOR);
    }

    @ParameterizedTest
    @CsvSource({"3 jan, SPEAKS_FOR", "4 jan, NOTHING_SPEAKS_FOR", "6 jan, NOTHING_SPEAKS_FOR"})
    void fewerDaysInTheCoolRoomThanTheLeastSpeakForRushed(String warmed, Verdict verdict) {
        Winter told = tulip(trench()).moved("31 dec", "stair window").moved(warmed, "parlour sill");

        assertThat(of(Cause.RUSHED, told).verdict()).isEqualTo(verdict);
    }

    @Test
    void straightIntoTheWarmRoomIsRushed() {
        Suspect rushed = of(Cause.RUSHED, tulip(trench()).moved("4 jan", "parlour sill"));

        assertThat(rushed.verdict()).isEqualTo(Verdict.SPEAKS_FOR);
    }

    @Test
    void stillInTheCoolRoomIsNotRushed() {
        assertThat(of(Cause.RUSHED, tulip(trench()).moved("10 jan", "stair window"))
                        .verdict())
                .isEqualTo(Verdict.NOTHING_SPEAKS_FOR);
    }

    @ParameterizedTest
    @CsvSource({"0", "1", "2", "3", "4", "5", "6", "7"})
    void inAnyWinterEveryCauseIsNamedOnceAndTheMostSpokenForFirst(long seed) {
        Outlook outlook = RandomWinter.of(seed).on(RandomWinter.today(seed));
        outlook.pots(outlook.today().season()).forEach(pot -> {
            List<Suspect> all = outlook.suspects(pot.life().pot().id(), Failure.NONE);

            assertThat(EnumSet.copyOf(all.stream().map(Suspect::cause).toList()))
                    .hasSize(Cause.values().length);
            assertThat(all).hasSize(Cause.values().length);
            assertThat(all.stream().map(Suspect::verdict)).isSorted();
            assertThat(all.stream()
                            .filter(suspect -> suspect.verdict() == Verdict.SPEAKS_FOR)
                            .map(suspect -> -suspect.clues().size()))
                    .isSorted();
        });
    }

    @Test
    void whatWasFoundPutsTheCausesItFitsFirst() {
        Winter told = tulip(trench()).saw("10 jan", new Winter.Look(Findings.ALL_WELL));
        Failure rushedLooks = Failure.NONE.withSigns(Set.of(Sign.LEAVES_ONLY, Sign.SHORT_AND_STUCK));
        List<Suspect> all = told.closed("12 jan", End.FAILED).on("12 jan").suspects(told.id("T8"), rushedLooks);

        assertThat(all.stream().filter(suspect -> suspect.verdict() == Verdict.NOTHING_SPEAKS_FOR))
                .extracting(Suspect::cause)
                .containsSubsequence(Cause.COLD_SHORT, Cause.FRUIT_NEAR)
                .containsSubsequence(Cause.RUSHED, Cause.FRUIT_NEAR);
        assertThat(all)
                .filteredOn(suspect -> suspect.cause() == Cause.RUSHED)
                .allSatisfy(suspect -> assertThat(suspect.weight()).isEqualTo(2));
    }

    @Test
    void rootsThroughTheHolesSpeakAgainstWhatKillsRoots() {
        Winter told = tulip(trench());
        List<Suspect> all = told.closed("12 jan", End.FAILED)
                .on("12 jan")
                .suspects(told.id("T8"), Failure.NONE.withRoots(Optional.of(Roots.THROUGH)));

        assertThat(all)
                .filteredOn(suspect -> suspect.weight() < 0)
                .extracting(Suspect::cause)
                .containsExactlyInAnyOrder(Cause.FROZEN, Cause.TOO_WET_OR_DRY);
    }

    @Test
    void saysSomethingOfEveryCause() {
        assertThatThrownBy(() -> new Suspect(Cause.FROZEN, Verdict.CANNOT_BE_TOLD, List.of(), List.of()))
                .hasMessageContaining("FROZEN");
    }
}
