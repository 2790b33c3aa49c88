// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Season;

class VarietyNowTest {
    private static List<VarietyNow> varieties(Winter told) {
        return told.on("12 jan").varieties();
    }

    @Test
    void varietiesStandByName() {
        List<VarietyNow> varieties =
                varieties(winter().pot("T1", "marrow Lane", "tulip").pot("H1", "Inkwell", "hyacinth"));

        assertThat(varieties).extracting(now -> now.variety().name()).containsExactly("Inkwell", "marrow Lane");
    }

    @Test
    void theRecordIsCountedByWinterAndByPot() {
        VarietyNow record = varieties(winter().of(2025)
                        .pots("T9-T10", "Marrow Lane", "tulip")
                        .outcome("1 mar", 4)
                        .then("T10")
                        .outcome("2 mar", 3)
                        .of(2024)
                        .pot("T1", "Marrow Lane", "tulip")
                        .outcome("1 mar", 2)
                        .of(2026))
                .get(0);

        assertThat(record.winters())
                .containsExactly(
                        new VarietyNow.Winter(new Season(2024), List.of(2)),
                        new VarietyNow.Winter(new Season(2025), List.of(4, 4, 3)));
        assertThat(record.winters().get(1).mean()).isEqualTo(11 / 3.0);
        assertThat(record.pots()).isEqualTo(4);
        assertThat(record.mean()).hasValue(13 / 4.0);
    }

    @Test
    void withoutAnOutcomeThereIsNoMean() {
        VarietyNow record =
                varieties(winter().pot("T1", "Marrow Lane", "tulip")).get(0);

        assertThat(record.winters()).isEmpty();
        assertThat(record.mean()).isEmpty();
    }

    @Test
    void anOutcomeOfAMixedPotSpeaksForBothVarieties() {
        List<VarietyNow> varieties = varieties(winter().mixed("T1", "Marrow Lane", "tulip", "Penny Gloaming", "crocus")
                .outcome("1 jan", 5));

        assertThat(varieties).allMatch(now -> now.pots() == 1 && now.mean().orElse(0) == 5);
    }

    @Test
    void aVarietyWithAScoreOfItsOwnIsNotCountedAgainWithThePot() {
        List<VarietyNow> varieties = varieties(winter().mixed("T1", "Marrow Lane", "tulip", "Penny Gloaming", "crocus")
                .outcome("1 jan", 5)
                .outcomeOf("Marrow Lane", "2 jan", 2));

        assertThat(varieties)
                .extracting(
                        now -> now.variety().name(),
                        VarietyNow::pots,
                        now -> now.mean().orElse(0))
                .containsExactly(tuple("Marrow Lane", 1, 2.0), tuple("Penny Gloaming", 1, 5.0));
    }

    @Test
    void bulbsBoughtThisSeasonAndInNoPotAreInHand() {
        VarietyNow bought =
                varieties(winter().pot("T1", "Marrow Lane", "tulip").cooled(0)).get(0);
        VarietyNow ordered =
                varieties(winter().pot("T1", "Marrow Lane", "tulip").ordered()).get(0);
        int inPot = 5;

        assertThat(bought.inHand()).isEqualTo(10 - inPot);
        assertThat(ordered.inHand()).isZero();
    }
}
