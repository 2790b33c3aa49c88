// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class WidgetsTest {
    private static final KeyLine KEYS = new KeyLine(List.of(
            new KeyLine.Hint("Enter", "card"), new KeyLine.Hint("Up Down", "line"), new KeyLine.Hint("?", "keys")));

    private static final List<String> POTS = List.of("T4", "H5", "D1", "P1", "M1", "S1", "H2", "T1", "D2", "T3");

    private static Listing pots(int cursor, Scroll scroll) {
        return new Listing(POTS.size(), cursor, scroll, (index, line, cells) -> {
            int after = cells.put(line.column() + 2, line.row(), POTS.get(index), Style.INK);
            cells.put(after + 1, line.row(), Sign.COLD, Style.of(Role.FROST));
        });
    }

    @Test
    void aRuleCarriesATitleAndWhatStandsAtItsRight() {
        Cells cells = Drawing.of(Rule.PLAIN.withTitle("Remove T8").withRight("1 of 2"), 30, 1);

        assertThat(cells.text()).isEqualTo("⎽⎽ Remove T8 ⎽⎽⎽⎽⎽⎽⎽ 1 of 2 ⎽⎽");
        assertThat(cells.styles()).isEqualTo("dd.BBBBBBBBB.ddddddd........dd");
    }

    @Test
    void aRuleWithoutWordsIsALine() {
        assertThat(Drawing.of(Rule.PLAIN, 5, 1, Alphabet.ASCII).text()).isEqualTo("_____");
    }

    @Test
    void keysStandThreeApartAndBold() {
        Cells cells = Drawing.of(KEYS, 42, 1);

        assertThat(cells.text()).isEqualTo(" Enter card   Up Down line   ? keys       ");
        assertThat(cells.styles()).isEqualTo(".BBBBB........BBBBBBB........B............");
    }

    @Test
    void aKeyThatDoesNotFitIsLeftOutButTheLastStays() {
        assertThat(Drawing.of(KEYS, 34, 1).text()).isEqualTo(" Enter card   ? keys              ");
        assertThat(Drawing.of(KEYS, 35, 1).text()).isEqualTo(" Enter card   Up Down line   ? keys");
    }

    @Test
    void aParagraphIsBrokenAtSpacesAndCutBelow() {
        Paragraph words = new Paragraph("May come in: weeks enough, roots, shoot 6 cm.", Style.PENCIL);

        assertThat(Drawing.of(words, 13, 3).text()).isEqualTo("May come in: \nweeks enough,\nroots, shoot ");
        assertThat(words.rows(13)).isEqualTo(4);
    }

    @Test
    void sentencesBeginALineEachAndStandInFromBothSides() {
        Sentences words = Sentences.of(List.of("May come in: roots.", "Shoot 6 cm."), 20);

        assertThat(words.rows()).isEqualTo(4);
        assertThat(Drawing.of(words, 20, 4).text())
                .isEqualTo("                    \n    May come in:    \n    roots.          \n    Shoot 6 cm.     ");
    }

    @Test
    void theCursorsLineIsBoldOnAWashAndKeepsItsColours() {
        Cells cells = Drawing.of(pots(1, Scroll.TOP), 8, 3);

        assertThat(cells.text()).isEqualTo("  T4 ⎽  \n▸ H5 ⎽  \n  D1 ⎽  ");
        assertThat(cells.styles()).isEqualTo(".....f..\nBBBBBfBB\n.....f..");
        assertThat(cells.style(7, 1).washed()).isTrue();
        assertThat(cells.style(7, 0).washed()).isFalse();
    }

    @Test
    void aListShowsTheLinesItIsScrolledTo() {
        assertThat(Drawing.of(pots(-1, new Scroll(8)), 6, 3).text()).isEqualTo("  D2 ⎽\n  T3 ⎽\n      ");
    }

    @Test
    void aSlipLeavesThePageInPencilButThePicksInInk() {
        Cells cells = Cells.blank(new Size(12, 6), Alphabet.UNICODE);
        cells.put(0, 0, "header", Style.BOLD);
        cells.put(1, 1, "+! T4 cold", Style.RUST);
        cells.put(2, 5, "hidden", Style.INK);
        Rect body = cells.area().withoutTop(1);
        new Slip("Move", 3, (area, on) -> on.put(area.column() + 1, area.row() + 1, "To", Style.BOLD))
                .render(body, cells);

        assertThat(cells.text())
                .isEqualTo("header      \n +! T4 cold \n            \n⎽⎽ Move ⎽⎽⎽⎽\n            \n To         ");
        assertThat(cells.styles())
                .isEqualTo("BBBBBB......\ndBdddddddddd\ndddddddddddd\ndd.BBBB.dddd\n............\n.BB.........");
        assertThat(Slip.inside(body, 3)).isEqualTo(new Rect(0, 4, 12, 2));
    }

    @Test
    void aSlipTallerThanThePageCoversIt() {
        Cells cells = Drawing.of(new Slip("Why", 9, pots(0, Scroll.TOP)), 10, 2);

        assertThat(cells.text()).isEqualTo("⎽⎽ Why ⎽⎽⎽\n▸ T4 ⎽    ");
    }

    static Stream<Arguments> everyWidget() {
        return Stream.of(
                Arguments.of("rule", Rule.PLAIN.withTitle("Remove T8").withRight("1 of 2")),
                Arguments.of("keys", KEYS),
                Arguments.of("paragraph", new Paragraph("May come in", Style.INK)),
                Arguments.of("sentences", Sentences.of(List.of("May come in: weeks enough."), 16)),
                Arguments.of("list", pots(3, new Scroll(2))),
                Arguments.of("slip", new Slip("Why", 3, KEYS)),
                Arguments.of("field", new FieldBox(Field.of("some text, 球根"))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("everyWidget")
    void drawsAtAnySizeAndNeverOutsideItsPart(String name, Widget widget) {
        for (int columns = 0; columns < 14; columns++) {
            for (int rows = 0; rows < 4; rows++) {
                Cells cells = Cells.blank(new Size(20, 8), Alphabet.UNICODE);
                cells.fill(cells.area(), Sign.AFTER_BLOOM, Style.PENCIL);
                Rect part = new Rect(3, 2, columns, rows);
                widget.render(part, cells);
                assertUntouchedOutside(part, cells);
                Drawing.of(widget, columns, rows);
            }
        }
    }

    private static void assertUntouchedOutside(Rect part, Cells cells) {
        for (int row = 0; row < 8; row++) {
            for (int column = 0; column < 20; column++) {
                if (!part.contains(column, row)) {
                    assertThat(cells.codePoint(column, row))
                            .as("%d,%d of %s", column, row, part)
                            .isEqualTo('~');
                    assertThat(cells.style(column, row)).isEqualTo(Style.PENCIL);
                }
            }
        }
    }
}
