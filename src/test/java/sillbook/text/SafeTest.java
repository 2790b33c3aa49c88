// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class SafeTest {
    @Test
    void plainTextAndTheProgramsSignsPassAsTheyAre() {
        String text = "▸ ! T4  'Marrow Lane' ⋅⎽⎼⎻✿╎⣀⠤⠒❀~ ▪10 — Écru";

        assertThat(Safe.text(text)).isEqualTo(text);
    }

    @Test
    void controlsAreShownAsTheKeysThatMakeThem() {
        assertThat(Safe.text("a\u001B[31mb\u0000\u007F")).isEqualTo("a^[[31mb^@^?");
        assertThat(Safe.text("\u009B31m\u009D0;x")).isEqualTo("<U+009B>31m<U+009D>0;x");
    }

    @Test
    void lineEndsAndTabsBecomeOneSpace() {
        assertThat(Safe.text("a\tb\r\nc\nd")).isEqualTo("a b c d");
    }

    @Test
    void directionsSeparatorsAndInvisiblesAreShownByNumber() {
        assertThat(Safe.text("a\u202Eb\u2066c\u2028d\u2029e\u200Bf\uFEFFg"))
                .isEqualTo("a<U+202E>b<U+2066>c<U+2028>d<U+2029>e<U+200B>f<U+FEFF>g");
        assertThat(Safe.text("\uD83C")).isEqualTo("<U+D83C>");
        assertThat(Safe.text("\uFFFE")).isEqualTo("<U+FFFE>");
        assertThat(Safe.text("daf\u00ADfodil")).isEqualTo("daffodil");
    }

    @Test
    void textIsComposedAndWhatCannotBeIsReducedToItsBase() {
        assertThat(Safe.text("e\u0301")).isEqualTo("é");
        assertThat(Safe.text("x\u0301\u0302y")).isEqualTo("xy");
        assertThat(Safe.text("👩\u200D🌾 ⚡\uFE0F 👍🏽")).isEqualTo("👩 ⚡ 👍");
        assertThat(Safe.text("🇳🇱")).isEqualTo("NL");
        assertThat(Safe.text("\u0301x")).isEqualTo("<U+0301>x");
    }

    /** CWE-150 and the Unicode control characters that reorder text: nothing of them may be left, whatever comes in. */
    @RepeatedTest(300)
    void whateverComesInNothingThatSteersATerminalComesOut(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        String raw = randomText(random);
        String safe = Safe.text(raw);

        assertThat(safe.codePoints()).allSatisfy(codePoint -> {
            assertThat(Character.isISOControl(codePoint)).isFalse();
            assertThat(Character.getType(codePoint))
                    .isNotIn(
                            (int) Character.FORMAT,
                            (int) Character.LINE_SEPARATOR,
                            (int) Character.PARAGRAPH_SEPARATOR,
                            (int) Character.SURROGATE,
                            (int) Character.NON_SPACING_MARK);
            assertThat(Width.of(codePoint)).isBetween(1, 2);
        });
        assertThat(Safe.text(safe)).isEqualTo(safe);
        assertThat(Normalizer.isNormalized(safe, Normalizer.Form.NFC)).isTrue();
    }

    static String randomText(Random random) {
        int[] blocks = {
            0, 0x80, 0x300, 0x1100, 0x2000, 0x2028, 0x3040, 0x4E00, 0xAC00, 0xD800, 0xFE00, 0x1F1E6, 0x1F300, 0xE0000
        };
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(30); i > 0; i--) {
            text.appendCodePoint(blocks[random.nextInt(blocks.length)] + random.nextInt(0x80));
        }
        return text.toString();
    }
}
