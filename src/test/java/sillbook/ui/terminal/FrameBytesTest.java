// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sillbook.chart.Days;
import sillbook.chart.PotLine;
import sillbook.chart.PotStage;
import sillbook.chart.RulerLayout;
import sillbook.chart.Sill;
import sillbook.chart.StageSpan;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Colour;
import sillbook.ui.draw.ColourDepth;
import sillbook.ui.draw.Frame;
import sillbook.ui.draw.Ground;
import sillbook.ui.draw.KeyLine;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Paint;
import sillbook.ui.draw.Palette;
import sillbook.ui.draw.Paragraph;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.PotLineStroke;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Rule;
import sillbook.ui.draw.RulerHead;
import sillbook.ui.draw.Scroll;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;

/**
 * How many bytes a frame takes, on pages like those of the program at 120 by 40: a list of text and a list of pot lines. The ideal it is
 * held against is the UTF-8 of the changed cells, one style sequence a run and one cursor move a run.
 */
class FrameBytesTest {
    private static final Size SIZE = new Size(120, 40);
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final RulerLayout RULER =
            RulerLayout.of(new Days(LocalDate.of(2026, 7, 1), LocalDate.of(2027, 7, 1)), TODAY, SIZE.columns());
    private static final double WORST = 1.3;
    private static final int TEXT_PAGE = 8 * 1024;
    /** Pot lines are signs of three bytes in up to nine colours a line: their UTF-8 alone is over 5 KB. */
    private static final int POTS_PAGE = 12 * 1024;

    private static final int CURSOR_MOVE = 500;

    private static Frame textPage(int cursor) {
        Scroll scroll = Scroll.TOP.follow(cursor, 80, 33);
        return page("Today", 33, cursor, scroll, (index, line, cells) -> {
            cells.put(
                    2, line.row(), index % 7 == 0 ? Sign.LATE : Sign.SOON, index % 7 == 0 ? Style.RUST : Style.PENCIL);
            cells.put(4, line.row(), "T" + index, Style.BOLD);
            cells.put(8, line.row(), "'Marrow Lane' x5     move to warm room      to parlour sill", Style.INK);
            cells.put(69, line.row(), "Thu 14 Jan", index % 7 == 0 ? Style.RUST : Style.INK);
        });
    }

    private static Frame potsPage(int cursor) {
        Scroll scroll = Scroll.TOP.follow(cursor, 80, 26);
        return page("Pots", 26, cursor, scroll, (index, line, cells) -> {
            cells.put(2, line.row(), Sign.SOON, Style.PENCIL);
            cells.put(4, line.row(), "T" + index, Style.BOLD);
            cells.put(8, line.row(), "'Marrow Lane'", Style.INK);
            new PotLineStroke(RULER, potLine(index)).render(line, cells);
        });
    }

    private static PotLine potLine(int index) {
        LocalDate potted = LocalDate.of(2026, 9, 1).plusDays(index * 3L % 60);
        return PotLine.of(
                RULER,
                List.of(
                        new StageSpan(PotStage.COLD, Days.of(potted, 105)),
                        new StageSpan(PotStage.COOL_ROOM, Days.of(potted.plusDays(105), 7)),
                        new StageSpan(PotStage.WARM_ROOM, Days.of(potted.plusDays(112), 14)),
                        new StageSpan(PotStage.IN_BLOOM, Days.of(potted.plusDays(126), 11)),
                        new StageSpan(PotStage.AFTER_BLOOM, Days.of(potted.plusDays(137), 28))),
                Optional.empty());
    }

    private static Frame page(String name, int rows, int cursor, Scroll scroll, Listing.Row row) {
        Cells cells = Cells.blank(SIZE, Alphabet.UNICODE);
        cells.put(1, 0, "Sillbook  " + name, Style.BOLD);
        Sill sill = Sill.of(RULER, List.of(Days.of(TODAY.minusDays(20), 90)));
        new RulerHead("Tue 12 Jan 2027", "season 2026-27", RULER, sill)
                .render(cells.area().lines(1, 2), cells);
        new Listing(80, cursor, scroll, row).render(cells.area().lines(3, rows), cells);
        card(cursor)
                .render(cells.area().lines(3 + rows, 33 - rows).withoutTop(1).withoutLeft(2), cells);
        Rect foot = cells.area().lines(36, 4);
        Rule.PLAIN.withRight("by next move, " + (cursor + 1) + " of 80").render(foot, cells);
        new Paragraph(
                        "T" + cursor + "  16 weeks in, about 15 cold enough; roots, shoot 6 cm. Use by Mon 25 Jan.",
                        Style.INK)
                .render(foot.lines(1, 2), cells);
        new KeyLine(List.of(new KeyLine.Hint("Enter", "card"), new KeyLine.Hint("?", "keys")))
                .render(foot.line(3), cells);
        return new Frame(cells, Optional.of(new Point(4, 3 + cursor - scroll.first())));
    }

    private static Paragraph card(int cursor) {
        String entry = "Sat " + (cursor % 28 + 1)
                + " Jan 2027, a round: moist, roots, shoot 3 cm; ready about Wed 6 Jan, use by Mon 25 Jan. ";
        return new Paragraph(entry.repeat(9), Style.INK);
    }

    static Stream<Arguments> palettes() {
        return Stream.of(Ground.DARK, Ground.NONE)
                .flatMap(ground -> Stream.of(ColourDepth.SIXTEEN, ColourDepth.INDEXED_256, ColourDepth.DIRECT_24_BIT)
                        .map(depth -> Arguments.of(ground, depth)));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("palettes")
    void noFrameTakesMuchMoreThanTheIdeal(Ground ground, ColourDepth depth) {
        List<Frame> frames = List.of(
                textPage(0),
                textPage(1),
                textPage(2),
                textPage(40),
                potsPage(0),
                potsPage(1),
                potsPage(33),
                textPage(2),
                potsPage(70));
        Palette palette = Palette.of(ground, depth);
        FrameWriter writer = new FrameWriter(palette);
        writer.write(frames.get(0));
        for (int i = 1; i < frames.size(); i++) {
            int ideal = ideal(frames.get(i - 1).cells(), frames.get(i).cells(), palette);
            int written = writer.write(frames.get(i)).length;
            assertThat((double) written / ideal)
                    .as("frame %d: %d bytes, ideal %d", i, written, ideal)
                    .isLessThanOrEqualTo(WORST);
            assertThat(written).isLessThan(POTS_PAGE);
        }
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("palettes")
    void aCursorMoveInAListOfTextIsShort(Ground ground, ColourDepth depth) {
        Palette palette = Palette.of(ground, depth);
        FrameWriter writer = new FrameWriter(palette);
        writer.write(textPage(5));
        assertThat(writer.write(textPage(6))).hasSizeLessThan(CURSOR_MOVE);
        assertThat(writer.write(textPage(7))).hasSizeLessThan(CURSOR_MOVE);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("palettes")
    void aWholePictureIsShort(Ground ground, ColourDepth depth) {
        assertThat(new FrameWriter(Palette.of(ground, depth)).write(potsPage(3)))
                .hasSizeLessThan(POTS_PAGE);
        assertThat(new FrameWriter(Palette.of(ground, depth)).write(textPage(3)))
                .hasSizeLessThan(TEXT_PAGE);
    }

    private static int ideal(Cells from, Cells to, Palette palette) {
        return IntStream.range(0, SIZE.rows())
                .map(row -> ideal(from, to, row, palette))
                .sum();
    }

    private static int ideal(Cells from, Cells to, int row, Palette palette) {
        int bytes = 0;
        Optional<Paint> painting = Optional.empty();
        for (int column = 0; column < SIZE.columns(); column++) {
            Paint paint = palette.paint(to.style(column, row));
            boolean same = from.codePoint(column, row) == to.codePoint(column, row)
                    && palette.paint(from.style(column, row)).equals(paint);
            if (same) {
                painting = Optional.empty();
                continue;
            }
            if (painting.isEmpty()) {
                bytes += ("\u001B[" + (row + 1) + ";" + (column + 1) + "H").length();
            }
            if (!painting.equals(Optional.of(paint))) {
                bytes += styleSequence(paint).length();
            }
            painting = Optional.of(paint);
            bytes += Character.toString(to.codePoint(column, row)).getBytes(StandardCharsets.UTF_8).length;
        }
        return bytes;
    }

    private static String styleSequence(Paint paint) {
        String weight = (paint.bold() ? ";1" : "") + (paint.dim() ? ";2" : "") + (paint.underlined() ? ";4" : "");
        return "\u001B[" + "0" + weight + colour(paint.foreground(), 30) + colour(paint.background(), 40) + "m";
    }

    private static String colour(Colour colour, int ground) {
        if (colour instanceof Colour.Direct direct) {
            int rgb = direct.rgb();
            return ";" + (ground + 8) + ";2;" + (rgb >> 16) + ";" + (rgb >> 8 & 0xFF) + ";" + (rgb & 0xFF);
        }
        if (colour instanceof Colour.Indexed indexed) {
            return ";" + (ground + 8) + ";5;" + indexed.number();
        }
        return colour instanceof Colour.Basic ? ";" + (ground + 60) : "";
    }
}
