// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AsciiTest {
    @ParameterizedTest(name = "{0} is written {1}")
    @CsvSource({
        "Écru, Ecru",
        "Straße, Strase",
        "ØRE, ORE",
        "'‘Marrow Lane’', '''Marrow Lane'''",
        "2–9, 2-9",
        "6 × 5, 6 x 5",
        "▪10 ▫14 ▴, =10 #14 ^",
        "⋅⎽⎼⎻✿╎⣀⠤⠒❀, '._-=*|_-=*'",
        "球根 x, ???? x",
        "🌷, ??"
    })
    void eachCharacterKeepsItsColumns(String text, String ascii) {
        assertThat(Ascii.of(text)).isEqualTo(ascii);
    }

    @RepeatedTest(100)
    void nothingElseComesOut(RepetitionInfo repetition) {
        String text = SafeTest.randomText(new Random(repetition.getCurrentRepetition()));
        String ascii = Ascii.of(text);

        assertThat(ascii.chars()).allMatch(c -> c >= ' ' && c < 0x7F);
        assertThat(ascii).hasSize(Width.of(text));
    }
}
