// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Place.Sort;
import sillbook.model.Season;
import sillbook.season.Winter;
import sillbook.season.past.Grown.Rating;

class WintersTest {
    private static final Season FIRST = new Season(2026);

    private static Winter house() {
        return winter().place("cellar", Sort.CELLAR)
                .place("fridge", Sort.FRIDGE)
                .place("sill", Sort.WARM_SILL);
    }

    private static Winters winters(Winter house, String day) {
        return Winters.of(house.journal(), house.day(day));
    }

    @Test
    void aPotCountsWhereItStoodLongestInTheCold() {
        Winter house = house().pot("T1", "Marrow Lane", "tulip/Triumph")
                .potted("1 oct", "cellar")
                .moved("20 oct", "fridge")
                .moved("10 jan", "sill")
                .flowered("1 feb")
                .outcome("5 feb", 4);
        assertThat(winters(house, "1 mar").all()).singleElement().satisfies(grown -> {
            assertThat(grown.coldAt()).contains(house.placeId("fridge"));
            assertThat(grown.daysOfCold()).isEqualTo(101);
            assertThat(grown.winter()).isEqualTo(FIRST);
            assertThat(grown.score()).contains(4);
            assertThat(grown.rating()).contains(Rating.WELL);
        });
    }

    @Test
    void whatWaitsToBePottedIsNotGrownAndWhatNobodyJudgedIsNotRated() {
        Winter house = house().pot("T1", "Marrow Lane", "tulip")
                .pot("T2", "Marrow Lane", "tulip")
                .potted("1 oct");
        assertThat(winters(house, "1 mar").all())
                .extracting(grown -> grown.pot().label(), Grown::coldAt, Grown::rating)
                .containsExactly(tuple("T2", Optional.empty(), Optional.empty()));
    }

    @Test
    void aPotOfWhichOnlyTheOutcomeIsWrittenHadNobodyKnowsWhatCold() {
        Winter house = house().pot("T1", "Marrow Lane", "tulip")
                .outcome("1 mar", 4)
                .pot("P1", "Linen Parade", "paperwhite")
                .potted("1 nov", "sill")
                .outcome("5 jan", 4);
        assertThat(winters(house, "1 apr").all())
                .extracting(grown -> grown.pot().label(), Grown::isTold, Grown::daysOfCold)
                .containsExactly(tuple("P1", true, 0L), tuple("T1", false, 0L));
    }

    @Test
    void ofThoseWithTheSameCountsTheHigherMeanStandsFirst() {
        Winter house = house().pot("D1", "Lantern Row", "daffodil")
                .outcome("1 mar", 4)
                .pot("T1", "Tuesday Coat", "tulip")
                .outcome("1 mar", 5)
                .pot("H1", "Inkwell", "hyacinth")
                .outcome("1 mar", 3);
        assertThat(winters(house, "1 apr").by(By.VARIETY))
                .extracting(tallied -> tallied.grown().get(0).pot().label())
                .containsExactly("T1", "D1", "H1");
    }

    @Test
    void aVarietyIsToldWinterByWinter() {
        Winter house = house().of(2025)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .outcome("1 mar", 4)
                .pot("T2", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .outcome("1 mar", 3)
                .of(2026)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .pot("H1", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar");
        Winters winters = winters(house, "1 dec");
        assertThat(winters.winterByWinter(winters.all().get(0).planting().variety()))
                .extracting(
                        VarietyWinter::winter,
                        VarietyWinter::pots,
                        VarietyWinter::scores,
                        one -> one.mean().orElse(0))
                .containsExactly(
                        tuple(new Season(2025), 2, List.of(4, 3), 3.5), tuple(FIRST, 1, List.<Integer>of(), 0.0));
        assertThat(winters.winterByWinter(new Id<>(99, 99))).isEmpty();
    }

    @Test
    void ofAMixedPotEachVarietyHasItsOwnOutcomeElseThePots() {
        Winter house = house().mixed("M1", "Inkwell", "hyacinth", "Lantern Row", "daffodil")
                .potted("1 oct", "cellar")
                .outcome("1 mar", 3)
                .outcomeOf("Lantern Row", "2 mar", 5)
                .flowered("20 feb", BloomPoint.FIRST_FLOWER, "Lantern Row");
        Winters winters = winters(house, "1 apr");
        assertThat(winters.all())
                .extracting(grown -> grown.score().orElseThrow())
                .containsExactly(3, 5);
        assertThat(winters.of(winters.all().get(1).planting().variety()))
                .singleElement()
                .satisfies(grown -> assertThat(grown.score()).contains(5));
    }

    @Test
    void aPlantThatLivesOnIsGrownOnceAWinter() {
        Winter house = house().pot("A1", "Umbrella Street", "amaryllis")
                .potted("20 nov", "sill")
                .flowered("10 jan")
                .pastBloom("10 feb")
                .outcome("10 feb", 4)
                .of(FIRST.next().year())
                .cared("15 sep", Care.RESTED)
                .cared("15 nov", Care.WOKEN)
                .flowered("10 jan")
                .outcome("20 jan", 2);
        Winters winters = winters(house, "1 mar");
        assertThat(winters.all())
                .extracting(Grown::winter, grown -> grown.score().orElseThrow())
                .containsExactly(tuple(FIRST, 4), tuple(FIRST.next(), 2));
        assertThat(winters.seasons()).containsExactly(FIRST, FIRST.next());
        assertThat(winters.in(FIRST.next())).hasSize(1);
    }

    // Counting

    @Test
    void aTallyCountsWellFairAndFailedAndWhatWasSaidLast() {
        Winter house = house().pots("T1-T2", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .then("T1")
                .outcome("1 mar", 4)
                .then("T2")
                .outcome("2 mar", 3)
                .pot("T3", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .closed("1 feb", End.FAILED)
                .pot("T4", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge");
        Tally tally = Tally.of(winters(house, "1 apr").all());
        assertThat(tally.pots()).as("T4 is not judged yet").isEqualTo(3);
        assertThat(List.of(Rating.values())).extracting(tally::count).containsExactly(1, 1, 1);
        assertThat(tally.shareOfWell()).isEqualTo(1.0 / 3);
        assertThat(tally.onlyAt()).contains(house.placeId("fridge"));
        assertThat(tally.again()).isEmpty();
    }

    @Test
    void onePotOrTwoPlacesSayNothingOfAPlace() {
        Winter house = house().pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "fridge")
                .outcome("1 mar", 4)
                .pot("T2", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .outcome("1 mar", 2);
        List<Grown> both = winters(house, "1 apr").all();
        assertThat(Tally.of(both).onlyAt()).isEmpty();
        assertThat(Tally.of(both.subList(0, 1)).onlyAt()).isEmpty();
    }

    @Test
    void nothingJudgedIsNoTally() {
        Tally none = Tally.of(List.of());
        assertThat(none.pots()).isZero();
        assertThat(none.shareOfWell()).isZero();
        assertThat(none.onlyAt()).isEmpty();
    }
}
