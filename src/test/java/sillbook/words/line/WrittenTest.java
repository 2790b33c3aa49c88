// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "6 x Marrow Lane x5, 19 cm | 6/x/Marrow/Lane/x5/,/19/cm",
                "x5,19 cm | x5/,/19/cm",
                "9,50, firm | 9,50/,/firm",
                "7,5 cm | 7,5/cm",
                "'Marrow Lane' x5 | Marrow Lane/x5",
                "‘Marrow Lane’ x5 | Marrow Lane/x5",
                "\"Marrow Lane\" x5 | Marrow Lane/x5",
                "Grower's Joy x5 | Grower's/Joy/x5",
                "'Grower's Joy' x5 | Grower's Joy/x5",
                "'Marrow La | Marrow La",
                "note T4: leaning | note/T4/:/leaning",
                "Penny (crocus)x5 | Penny/(/crocus/)/x5",
                "2-9 C, -1 to 4 | 2-9/C/,/-1/to/4",
            })
    void aLineIsTakenApartIntoWordsAndMarks(String line, String words) {
        assertThat(Written.of(line).words()).extracting(Written.Word::text).containsExactly(words.split("/", -1));
    }

    @Test
    void aQuotedWordStandsWithItsQuotes() {
        Written line = Written.of("T4 'cool room'");

        assertThat(line.isQuoted(1)).isTrue();
        assertThat(line.stretch(1, 2).of(line.line())).isEqualTo("'cool room'");
        assertThat(line.text(0, 2)).isEqualTo("T4 cool room");
    }

    @Test
    void phrasesEndAtMarks() {
        Written line = Written.of("T4 dry, T5 wet");

        assertThat(line.phraseEnd(0)).isEqualTo(2);
        assertThat(line.isPhraseStart(3)).isTrue();
        assertThat(line.isPhraseStart(4)).isFalse();
        assertThat(line.rest(3)).isEqualTo("T5 wet");
        assertThat(line.rest(9)).isEmpty();
    }
}
