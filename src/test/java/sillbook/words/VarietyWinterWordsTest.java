// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import org.junit.jupiter.api.Test;
import sillbook.model.Happening.End;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.season.Winter;
import sillbook.season.past.Winters;

class VarietyWinterWordsTest {
    private static VarietyWinterWords said(Winter told) {
        Journal journal = told.journal();
        Winters winters = Winters.of(journal, told.day("1 jun"));
        return new VarietyWinterWords(
                winters.winterByWinter(winters.all().get(0).planting().variety())
                        .get(0),
                journal);
    }

    private static Winter house() {
        return winter().place("cellar", Sort.CELLAR).place("sill", Sort.WARM_SILL);
    }

    @Test
    void aWinterSaysItsScoreItsFlowersItsPlacesAndTheLastNote() {
        VarietyWinterWords said = said(house().pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .outcome("1 mar", 4, 5, "first")
                .pot("T2", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .outcome("1 mar", 5, 3, "")
                .pot("T3", "Marrow Lane", "tulip")
                .outcome("1 mar", 1));

        assertThat(said.winter()).isEqualTo("2026-27");
        assertThat(said.score()).isEqualTo("3.3");
        assertThat(said.flowers()).isEqualTo("8 of 10");
        assertThat(said.coldAt()).isEqualTo("cellar, ?");
        assertThat(said.noted()).isEqualTo("first");
    }

    @Test
    void whatNobodyWroteIsNoFigure() {
        VarietyWinterWords said =
                said(house().pot("P1", "Linen Parade", "paperwhite").potted("1 nov", "sill"));

        assertThat(said.score()).isEqualTo("?");
        assertThat(said.flowers()).isEqualTo("?");
        assertThat(said.coldAt()).isEqualTo("none");
        assertThat(said.noted()).isEmpty();
    }

    @Test
    void whereAllFailedThatIsSaid() {
        Winter failed = house().pot("T1", "Marrow Lane", "tulip")
                .potted("1 oct", "cellar")
                .closed("1 feb", End.FAILED);
        assertThat(said(failed).score()).isEqualTo("failed");
        assertThat(said(failed.pot("T2", "Marrow Lane", "tulip").potted("1 oct", "cellar"))
                        .score())
                .as("one of two")
                .isEqualTo("?");
    }
}
