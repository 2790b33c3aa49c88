// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FieldBoxTest {
    private static String drawn(Field field, int columns) {
        FieldBox box = new FieldBox(field);
        Cells cells = Drawing.of(box, columns, 1);
        int caret = box.cursor(cells.area()).column();
        return cells.text() + " " + caret;
    }

    private static Field back(Field field, int times) {
        Field now = field;
        for (int i = 0; i < times; i++) {
            now = now.press(Keys.LEFT).orElseThrow();
        }
        return now;
    }

    @Test
    void typedTextIsUnderlinedOnARuledLine() {
        Cells cells = Drawing.of(new FieldBox(Field.of("Lin")), 8, 1);

        assertThat(cells.text()).isEqualTo("Lin_____");
        assertThat(cells.styles()).isEqualTo("uuuddddd");
    }

    @Test
    void textLongerThanTheBoxScrollsUnderTheCaret() {
        Field field = Field.of("abcdefghij");

        assertThat(drawn(Field.of("abcdefg"), 8)).isEqualTo("abcdefg_ 7");
        assertThat(drawn(field, 8)).isEqualTo("‹efghij_ 7");
        assertThat(drawn(back(field, 1), 8)).isEqualTo("‹efghij_ 6");
        assertThat(drawn(back(field, 3), 8)).isEqualTo("‹cdefgh› 6");
        assertThat(drawn(back(field, 10), 8)).isEqualTo("abcdefg› 0");
    }

    @Test
    void wideCharactersAreNeverCutAtTheEdge() {
        assertThat(drawn(Field.of("球根球根球"), 6)).isEqualTo("‹根球_ 5");
    }

    @Test
    void theCaretStaysInAnyBox() {
        for (int columns = 1; columns < 12; columns++) {
            for (int steps = 0; steps <= 10; steps++) {
                FieldBox box = new FieldBox(back(Field.of("abc球efg根ij"), steps));
                assertThat(box.cursor(new Rect(0, 0, columns, 1)).column()).isBetween(0, columns - 1);
            }
        }
    }
}
