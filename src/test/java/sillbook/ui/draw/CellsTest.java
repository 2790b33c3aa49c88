// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CellsTest {
    private final Cells cells = Cells.blank(new Size(8, 2), Alphabet.UNICODE);

    @Test
    void aPictureShowsTextAndStyles() {
        int after = cells.put(1, 0, "T4", Style.BOLD);
        cells.put(after + 1, 0, Sign.LATE, Style.RUST);
        cells.put(0, 1, Sign.COLD, Style.of(Role.FROST));

        assertThat(cells.text()).isEqualTo(" T4 !   \n⎽       ");
        assertThat(cells.styles()).isEqualTo(".BB.R...\nf.......");
    }

    @Test
    void textIsClippedAtEveryEdge() {
        cells.put(-2, 0, "abcdefghijklmnop", Style.INK);
        cells.put(0, -1, "above", Style.INK);
        cells.put(0, 2, "below", Style.INK);

        assertThat(cells.text()).isEqualTo("cdefghij\n        ");
    }

    @Test
    void theColumnAfterIsToldAlsoWhereTextIsClipped() {
        assertThat(cells.put(5, 0, "球根 abc", Style.INK)).isEqualTo(13);
    }

    @Test
    void aWideCharacterIsNeverHalved() {
        cells.put(0, 0, "球根球根", Style.INK);
        cells.put(1, 0, "x", Style.INK);
        cells.put(6, 0, "y", Style.INK);
        cells.put(7, 1, "球", Style.INK);

        assertThat(cells.text()).isEqualTo(" x根球y \n        ");
    }

    @Test
    void anythingThatCouldSteerATerminalIsShownInstead() {
        cells.put(0, 0, "a\u001B[2J", Style.INK);
        cells.put(0, 1, "\u202Eab", Style.INK);

        assertThat(cells.text()).isEqualTo("a^[[2J  \n<U+202E>");
    }

    @Test
    void inAsciiNothingElseIsWritten() {
        Cells ascii = Cells.blank(new Size(8, 2), Alphabet.ASCII);
        ascii.put(0, 0, "Écru ▪10", Style.INK);
        ascii.put(ascii.put(0, 1, Sign.NOW, Style.INK), 1, Sign.BLOOM, Style.INK);

        assertThat(ascii.text()).isEqualTo("Ecru =10\n:*      ");
    }

    @Test
    void aPartOfTheCellsKeepsWhatIsWrittenWithinIt() {
        Cells part = cells.within(new Rect(2, 0, 3, 1)).within(new Rect(0, 0, 4, 2));
        part.put(0, 0, "abcdefgh", Style.INK);
        part.put(0, 1, "lost", Style.INK);
        part.put(3, 0, "球", Style.INK);

        assertThat(part.area()).isEqualTo(new Rect(2, 0, 2, 1));
        assertThat(cells.text()).isEqualTo("  c     \n        ");
    }
}
