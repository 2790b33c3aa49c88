// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.model.Place.Sort;
import sillbook.reckon.effects.Proportion;
import sillbook.season.Winter;
import sillbook.season.past.Influence;
import sillbook.season.past.Trait;
import sillbook.season.past.Trials;
import sillbook.season.past.Trials.Silence;
import sillbook.season.past.Winters;

class MeritWordsTest {
    private int pots;

    private static Winter house() {
        return winter().place("fridge", Sort.FRIDGE).place("cellar", Sort.CELLAR);
    }

    private Winter grown(Winter house, String variety, String kind, String place, int... scores) {
        for (int score : scores) {
            house.pot("T" + ++pots, variety, kind).potted("1 oct", place).outcome("1 mar", score);
        }
        return house;
    }

    private static List<String> lines(Winter house, Trait trait) {
        Trials trials = Trials.of(Winters.of(house.journal(), house.day("1 apr")), house.journal());
        return new MeritWords(house.journal()).lines(trials, trials.merits(trait, trials.averaged()));
    }

    @Test
    void aTieIsSaidBeforeAnyFigure() {
        Winter house = grown(house(), "Tuesday Coat", "tulip", "fridge", 5, 4, 5);
        grown(house, "Marrow Lane", "tulip", "cellar", 3, 3);
        grown(house, "Lantern Row", "tulip", "cellar", 2, 3);
        List<String> lines = lines(house, Trait.VARIETY);
        assertThat(lines.get(0)).isEqualTo("Varieties, with place taken out: 1 winter, 7 scored pots.");
        assertThat(lines.get(1))
                .isEqualTo("All 3 pots of 'Tuesday Coat' stood in the fridge, and no other did. Which made the"
                        + " difference cannot be told; one of 'Tuesday Coat' elsewhere would tell.");
        assertThat(lines.get(2)).startsWith("'Marrow Lane': ").contains("cannot be told from 'Lantern Row'");
        assertThat(lines.get(4)).isEqualTo("'Tuesday Coat': no figure, 3 pots, few, plain mean 4.7");
        assertThat(lines(house, Trait.PLACE).get(1))
                .isEqualTo("All 3 pots from the fridge were of 'Tuesday Coat', and no other was. Which made the"
                        + " difference cannot be told; one from the fridge of another variety would tell.");
    }

    /** Every sort of pair has its words. */
    @Test
    void threeThingsAtOnce() {
        Winter house = grown(house(), "Tuesday Coat", "tulip", "fridge", 5);
        house.of(2027);
        grown(house, "Inkwell", "hyacinth", "cellar", 3, 2);
        grown(house, "Lantern Row", "hyacinth", "cellar", 3, 2);
        assertThat(lines(house, Trait.VARIETY).get(1))
                .isEqualTo("The one pot of 'Tuesday Coat' stood in the fridge and grew in 2026-27, and no other did."
                        + " Which made the difference cannot be told; one of 'Tuesday Coat' elsewhere or in another"
                        + " winter would tell.");
        assertThat(lines(house, Trait.WINTER).get(1)).startsWith("The one pot of 2026-27 was of kind tulip");
        assertThat(lines(house, Trait.KIND).get(1)).startsWith("The one pot of tulip stood in the fridge");
    }

    @Test
    void whyThereAreCountsOnly() {
        Winter house = grown(house(), "Tuesday Coat", "tulip", "fridge", 5, 4);
        assertThat(lines(house, Trait.VARIETY))
                .containsExactly(
                        "Varieties: 1 winter, 2 scored pots.",
                        "Too few scores to tell anything apart: it takes three.",
                        "'Tuesday Coat': no figure, 2 pots, few, plain mean 4.5");
        assertThat(lines(house(), Trait.VARIETY)).isEmpty();
        house.pot("X", "Tin Starling", "tulip").potted("1 oct", "cellar");
        assertThat(lines(house, Trait.VARIETY)).endsWith("No data: 'Tin Starling'.");
    }

    @ParameterizedTest
    @EnumSource(Silence.class)
    void everySilenceIsASentence(Silence silence) {
        assertThat(MeritWords.said(silence)).endsWith(".");
    }

    @ParameterizedTest
    @EnumSource(Trait.class)
    void everyTraitHasItsWords(Trait trait) {
        assertThat(InfluenceWords.traits(trait)).isNotEqualTo(InfluenceWords.code(trait));
        assertThat(InfluenceWords.otherwise(trait)).isNotEmpty();
        assertThat(InfluenceWords.trait(InfluenceWords.code(trait)).value().isPresent())
                .isEqualTo(trait != Trait.KIND && trait != Trait.WINTER);
    }

    @Test
    void theBestPlainMeanOfTheBestPlaceIsRemarkedOn() {
        Winter house = grown(house(), "Tuesday Coat", "tulip", "fridge", 5, 5, 4, 5);
        grown(house, "Marrow Lane", "tulip", "fridge", 5, 4, 4);
        grown(house, "Marrow Lane", "tulip", "cellar", 2, 3, 2, 2, 3);
        assertThat(lines(house, Trait.VARIETY))
                .anySatisfy(line -> assertThat(line)
                        .startsWith(
                                "'Tuesday Coat': Plain mean 4.8, the best; but all 4 stood in the best place, fridge."
                                        + " Taken out: ")
                        .endsWith(", still first, not to be told from 'Marrow Lane'."));
        assertThat(lines(house, Trait.PLACE))
                .noneSatisfy(line -> assertThat(line).contains("the best;"));
    }

    @ParameterizedTest
    @CsvSource({"4, 3, 'not surely.'", "5, 2, leads."})
    void withThePlaceTakenOutAnotherMayLead(int inTheFridge, int inTheCellar, String ending) {
        Winter house = grown(house(), "Tuesday Coat", "tulip", "fridge", 4, 4, 5, 4, 4);
        grown(house, "Night Marbles", "tulip", "fridge", 5, inTheFridge);
        grown(house, "Night Marbles", "tulip", "cellar", 4, 3, 4, 4, 3, 4);
        grown(house, "Marrow Lane", "tulip", "fridge", 4, 3, 4);
        grown(house, "Marrow Lane", "tulip", "cellar", inTheCellar, 2, 2, 1, 2);
        assertThat(lines(house, Trait.VARIETY))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("'Tuesday Coat': Plain mean 4.2, the best;")
                        .contains("; 'Night Marbles' leads")
                        .endsWith(ending));
    }

    @Test
    void theFootSaysHowSureItIs() {
        Winter house = grown(house(), "Tuesday Coat", "tulip", "fridge", 5, 5, 5, 5, 5, 5);
        grown(house, "Marrow Lane", "tulip", "fridge", 1, 2, 1, 1, 2);
        Trials trials = Trials.of(Winters.of(house.journal(), house.day("1 apr")), house.journal());
        MeritWords words = new MeritWords(house.journal());
        assertThat(trials.merits(Trait.VARIETY, trials.averaged()).all().stream()
                        .map(words::aside))
                .containsExactly(
                        "6 pots, plain mean 5.0. It can be told from all others.",
                        "5 pots, plain mean 1.4. It can be told from all others.");
        assertThat(words.aside(
                        trials.merits(Trait.PLACE, Optional.empty()).all().get(0)))
                .isEqualTo("11 pots, plain mean 3.4.");
        house.pot("X", "Tin Starling", "tulip").potted("1 oct", "cellar");
        Trials more = Trials.of(Winters.of(house.journal(), house.day("1 apr")), house.journal());
        assertThat(words.aside(more.merits(Trait.VARIETY, Optional.empty())
                        .withoutScore()
                        .get(0)))
                .isEqualTo("0 pots.");
    }

    @Test
    void sharesHaveTheirDoubt() {
        assertThat(MeritWords.flowered(new Proportion(4, 6))).contains("4 of 6 bulbs flowered (30-90 %)");
        assertThat(MeritWords.flowered(new Proportion(0, 0))).isEqualTo(Optional.empty());
    }

    @Test
    void whatNobodyWroteHasAName() {
        InfluenceWords words = new InfluenceWords(house().journal());
        assertThat(words.whose(new Influence.OfPlace(Optional.empty()))).isEqualTo("from the place nobody wrote");
        assertThat(words.did(new Influence.OfMix(Optional.empty()))).isEqualTo("grew in a mix nobody wrote");
    }
}
