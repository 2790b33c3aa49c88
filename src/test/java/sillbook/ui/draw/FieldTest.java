// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class FieldTest {
    private static Field press(Field field, Key... keys) {
        Field now = field;
        for (Key key : keys) {
            now = now.press(key).orElseThrow();
        }
        return now;
    }

    @Test
    void typedCharactersStandWhereTheCaretIs() {
        Field field = press(Field.of("fri"), Keys.HOME, Key.of('a'), Keys.RIGHT, Key.of('-'));

        assertThat(field.text()).isEqualTo("af-ri");
        assertThat(field.before()).isEqualTo("af-");
        assertThat(field.after()).isEqualTo("ri");
    }

    @Test
    void backspaceAndDeleteTakeWholeCharacters() {
        Field accent = Field.of("Ae\u0301\u0323z");
        assertThat(press(accent, Keys.LEFT, Keys.BACKSPACE).text()).isEqualTo("Az");
        Field family = Field.of("a\uD83D\uDC69\u200D\uD83C\uDF3Eb");
        assertThat(press(family, Keys.HOME, Keys.RIGHT, Keys.DELETE).text()).isEqualTo("ab");
    }

    @Test
    void anAccentTypedAfterItsLetterJoinsIt() {
        Field field = press(Field.of("cafe"), Key.of(0x301));

        assertThat(field.text()).isEqualTo("café");
        assertThat(field.caret()).isEqualTo(4);
    }

    @Test
    void ctrlWTakesTheWordBeforeTheCaret() {
        Field field = press(Field.of("6 x Marrow  Lane  "), Key.ctrl('w'));
        assertThat(field.text()).isEqualTo("6 x Marrow  ");
        assertThat(press(field, Keys.LEFT, Keys.LEFT, Key.ctrl('w')).text()).isEqualTo("6 x   ");
    }

    @Test
    void ctrlUTakesAllAndBringsItBack() {
        Field typed = Field.of("19 cm");
        Field empty = press(typed, Key.ctrl('u'));
        assertThat(empty.isEmpty()).isTrue();
        assertThat(press(empty, Key.ctrl('u')).text()).isEqualTo("19 cm");
        assertThat(press(empty, Key.of('x'), Key.ctrl('u'), Key.ctrl('u')).text())
                .isEqualTo("x");
    }

    @Test
    void wordsAreWalkedWithCtrl() {
        Key.Named left = new Key.Named(Key.Name.LEFT, true, false);
        Key.Named right = new Key.Named(Key.Name.RIGHT, true, false);
        Field field = Field.of("to stair window");

        assertThat(press(field, left).after()).isEqualTo("window");
        assertThat(press(field, left, left).after()).isEqualTo("stair window");
        assertThat(press(field, left, left, left, right).before()).isEqualTo("to");
        assertThat(press(field, Keys.HOME, right, right).before()).isEqualTo("to stair");
    }

    @Test
    void pasteIsTextWithoutLineEndsAndControls() {
        assertThat(Field.of("a").insert("1\r\n2\t3\u001B[A\u202E\u0007").text()).isEqualTo("a1 2 3[A");
    }

    @Test
    void keysThatAreNotAFieldsAreLeftToTheScreen() {
        Field field = Field.of("x");

        assertThat(field.press(Keys.ENTER)).isEmpty();
        assertThat(field.press(Keys.UP)).isEmpty();
        assertThat(field.press(Keys.BACK_TAB)).isEmpty();
        assertThat(field.press(Key.ctrl('c'))).isEmpty();
        assertThat(field.press(new Key.Named(Key.Name.UP, true, false))).isEmpty();
        assertThat(field.press(Key.of('q'))).isPresent();
    }

    /** Against a plain string builder, which is right as long as every character is a single unit. */
    @RepeatedTest(100)
    void anyKeysDoWhatTheyDoToAPlainText(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        StringBuilder expected = new StringBuilder();
        int caret = 0;
        Field field = Field.EMPTY;
        for (int i = 0; i < 60; i++) {
            switch (random.nextInt(5)) {
                case 0 -> {
                    char typed = (char) ('a' + random.nextInt(26));
                    expected.insert(caret++, typed);
                    field = press(field, Key.of(typed));
                }
                case 1 -> {
                    caret = Math.max(0, caret - 1);
                    field = press(field, Keys.LEFT);
                }
                case 2 -> {
                    caret = Math.min(expected.length(), caret + 1);
                    field = press(field, Keys.RIGHT);
                }
                case 3 -> {
                    if (caret > 0) {
                        expected.deleteCharAt(--caret);
                    }
                    field = press(field, Keys.BACKSPACE);
                }
                default -> {
                    if (caret < expected.length()) {
                        expected.deleteCharAt(caret);
                    }
                    field = press(field, Keys.DELETE);
                }
            }
            assertThat(field.text()).isEqualTo(expected.toString());
            assertThat(field.caret()).isEqualTo(caret);
        }
    }
}
