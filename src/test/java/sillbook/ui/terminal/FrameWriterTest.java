// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.ColourDepth;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Ground;
import sillbook.ui.draw.Paint;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;

class FrameWriterTest {
    private static final Palette DARK = Palette.of(Ground.DARK, ColourDepth.INDEXED_256);
    private final FrameWriter writer = new FrameWriter(DARK);

    private String write(Frame frame) {
        return new String(writer.write(frame), StandardCharsets.UTF_8).replace('\u001B', '^');
    }

    private static Frame frame(String text, int column) {
        Cells cells = Cells.blank(new Size(20, 3), Alphabet.UNICODE);
        cells.put(2, 1, text, Style.INK);
        return new Frame(cells, Optional.of(new Point(column, 1)));
    }

    @Test
    void theFirstFrameIsWholeAndComesAtOnce() {
        assertThat(write(frame("ab", 4))).isEqualTo("^[?2026h^[?25l^[m^[2J^[2;3Hab^[?25h^[?2026l");
    }

    @Test
    void afterThatOnlyWhatChangedIsWritten() {
        write(frame("ab", 4));
        assertThat(write(frame("abc", 5))).isEqualTo("c");
        assertThat(write(frame("abc", 5))).isEmpty();
        assertThat(write(frame("ab", 4))).isEqualTo("^[2;5H^[K");
        assertThat(write(frame("Ab", 4))).isEqualTo("^[2;3HA^[C");
    }

    @Test
    void cellsBetweenAreWrittenAgainWhereThatIsShorterThanAMove() {
        write(frame("abcdefgh", 2));
        assertThat(write(frame("Abcdefgh", 3))).isEqualTo("A");
        assertThat(write(frame("aBcDEfgh", 2))).isEqualTo("^[2;3HaBcDE^[2;3H");
        assertThat(write(frame("abcdeFGH", 10))).isEqualTo("abcdeFGH");
    }

    @Test
    void afterACharacterOfDoubtfulWidthTheCursorIsPlacedAnew() {
        write(frame("", 2));
        assertThat(write(frame("🌷b", 5))).isEqualTo("🌷^[2;5Hb");
    }

    @Test
    void aHiddenCursorIsShownAgain() {
        write(frame("a", 2));
        Frame none = new Frame(frame("a", 2).cells(), Optional.empty());
        assertThat(write(none)).isEqualTo("^[?25l");
        assertThat(write(frame("a", 2))).isEqualTo("^[?25h");
    }

    @Test
    void forgettingAndAnotherSizeMeanAWholeFrame() {
        write(frame("ab", 4));
        writer.forget();
        assertThat(write(frame("ab", 4))).contains("^[2J");
        Cells wider = Cells.blank(new Size(21, 3), Alphabet.UNICODE);
        assertThat(write(new Frame(wider, Optional.empty()))).contains("^[2J");
    }

    /** Whatever frames follow each other, a terminal that reads the bytes shows the last one. */
    @RepeatedTest(150)
    void aTerminalShowsWhatWasDrawn(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        Size size = new Size(1 + random.nextInt(30), 1 + random.nextInt(6));
        ColourDepth depth = any(random, ColourDepth.values());
        Palette palette = Palette.of(any(random, Ground.values()), depth);
        FrameWriter any = new FrameWriter(palette);
        Screen screen = new Screen(size);
        Cells cells = Cells.blank(size, Alphabet.UNICODE);
        for (int frames = 0; frames < 12; frames++) {
            cells = random.nextInt(4) == 0 ? Cells.blank(size, Alphabet.UNICODE) : copy(cells);
            scribble(random, cells);
            Point cursor = new Point(random.nextInt(size.columns()), random.nextInt(size.rows()));
            screen.read(any.write(new Frame(cells, Optional.of(cursor))));
            assertShows(screen, cells, palette);
            assertThat(screen.cursor()).isEqualTo(cursor.column() + "," + cursor.row());
        }
    }

    @SafeVarargs
    private static <T> T any(Random random, T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private static Cells copy(Cells cells) {
        Cells copy = Cells.blank(cells.size(), Alphabet.UNICODE);
        for (int row = 0; row < cells.size().rows(); row++) {
            for (int column = 0; column < cells.size().columns(); column++) {
                if (cells.codePoint(column, row) != 0) {
                    copy.put(column, row, Character.toString(cells.codePoint(column, row)), cells.style(column, row));
                }
            }
        }
        return copy;
    }

    private static void scribble(Random random, Cells cells) {
        String[] words = {"cold", "球根", "🌷", "é", "⎽⎽⎽", "     ", "a b", "✿", "⚡!"};
        for (int i = random.nextInt(6); i >= 0; i--) {
            Style style = new Style(
                    any(random, Role.values()), random.nextBoolean(), random.nextInt(4) == 0, random.nextBoolean());
            int column = random.nextInt(cells.size().columns() + 4) - 2;
            cells.put(column, random.nextInt(cells.size().rows()), words[random.nextInt(words.length)], style);
        }
    }

    private static void assertShows(Screen screen, Cells cells, Palette palette) {
        for (int row = 0; row < cells.size().rows(); row++) {
            for (int column = 0; column < cells.size().columns(); column++) {
                String place = column + "," + row;
                int codePoint = cells.codePoint(column, row);
                Paint drawn = palette.paint(cells.style(column, row));
                Paint seen = screen.paint(column, row);
                assertThat(screen.codePoint(column, row)).as(place).isEqualTo(codePoint);
                assertThat(seen.background()).as(place).isEqualTo(drawn.background());
                assertThat(seen.underlined()).as(place).isEqualTo(drawn.underlined());
                if (codePoint != ' ') {
                    assertThat(seen).as(place).isEqualTo(drawn);
                }
            }
        }
    }
}
