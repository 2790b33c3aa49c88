// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Variety;
import sillbook.season.Figures;
import sillbook.season.Suiting;
import sillbook.words.line.Bench;

/** Why a variety suits pots, in words, with its source. */
class SuitingWordsTest {
    private static String why(String... lines) {
        Bench bench = Shelves.after(Arrays.asList(lines));
        Journal journal = bench.journal();
        Variety last =
                journal.varieties().all().stream().reduce((one, other) -> other).orElseThrow();
        Suiting suiting =
                Suiting.of(last, Figures.of(journal, Handbook.standard(), LocalDate.EPOCH), Handbook.standard());
        SuitingWords words = new SuitingWords(Handbook.standard(), journal.settings());
        return words.why(last, suiting).orElse("")
                + SuitingWords.byPacket(last, suiting).map(says -> " " + says).orElse("");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tulip triumph, packet yes | Triumph suits pots (▫). Its packet says it can be forced.",
                "tulip double early | Double Early suits pots too (▫).",
                "tulip single late | Single Late has long stems for a pot (▫).",
                "tulip triumph, packet no | Its packet says not to force it.",
                "tulip triumph, packet no, suits pots | Your mark: suits pots (▪). Its packet says not to force it.",
                "daffodil 2, 24 cm | 24 cm: short enough for small pots, to 25 cm (common practice).",
                "daffodil 2, 40 cm | 40 cm: tall for small pots, over 25 cm (common practice); not banned.",
                "hyacinth | Nearly all hyacinths suit pots (common practice).",
                "crocus | ''",
                "tulip parrot | ''"
            })
    void theReasonIsNamedWithItsSource(String kind, String why) {
        assertThat(why("variety Goose Errand, " + kind)).isEqualTo(why);
    }

    @Test
    void anOwnLimitIsMarkedAsOwn() {
        for (String figure : List.of(
                "figure daffodil small pot height 45",
                "figure Goose Errand small pot height 45",
                "figure all hardy small pot height 45")) {
            assertThat(why("variety Goose Errand, daffodil 2, 40 cm", figure))
                    .isEqualTo("40 cm: short enough for small pots, to 45 cm (▪).");
        }
    }

    @Test
    void everyStandingHasItsHeading() {
        assertThat(Suiting.Standing.values()).extracting(SuitingWords::heading).doesNotHaveDuplicates();
        assertThat(Suiting.Standing.values())
                .extracting(SuitingWords.STANDINGS::say)
                .doesNotHaveDuplicates();
    }
}
