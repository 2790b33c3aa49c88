// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.Arrays;
import java.util.PrimitiveIterator;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sillbook.text.Ascii;
import sillbook.text.Safe;
import sillbook.text.Width;

/**
 * A grid of characters and styles: what a terminal, a picture or a test shows. Everything written is made safe, is clipped at the
 * edges, and stands in the grid's alphabet. A wide character takes two cells; half of one is never left behind.
 */
public final class Cells {
    private static final int BLANK = ' ';
    /** In the second cell of a wide character. */
    private static final int CONTINUED = 0;

    private final Size size;
    private final Alphabet alphabet;
    private final int[] codePoints;
    private final Style[] styles;
    private final Rect area;

    private Cells(Size size, Alphabet alphabet, int[] codePoints, Style[] styles, Rect area) {
        this.size = size;
        this.alphabet = alphabet;
        this.codePoints = codePoints;
        this.styles = styles;
        this.area = area;
    }

    public static Cells blank(Size size, Alphabet alphabet) {
        int[] codePoints = new int[size.columns() * size.rows()];
        Style[] styles = new Style[codePoints.length];
        Arrays.fill(codePoints, BLANK);
        Arrays.fill(styles, Style.INK);
        return new Cells(size, alphabet, codePoints, styles, size.area());
    }

    /** The same cells, of which only this part can be drawn on; what is written beyond it is lost. */
    public Cells within(Rect part) {
        return new Cells(size, alphabet, codePoints, styles, area.intersect(part));
    }

    public Size size() {
        return size;
    }

    public Alphabet alphabet() {
        return alphabet;
    }

    /** The part that can be drawn on. */
    public Rect area() {
        return area;
    }

    /** Writes a text on one line and gives the column after it, also where the text was clipped. */
    public int put(int column, int row, String text, Style style) {
        String shown = alphabet == Alphabet.ASCII ? Ascii.of(text) : Safe.text(text);
        int at = column;
        PrimitiveIterator.OfInt codePoints = shown.codePoints().iterator();
        while (codePoints.hasNext()) {
            at = write(at, row, codePoints.nextInt(), style);
        }
        return at;
    }

    /** Writes a sign and gives the column after it. */
    public int put(int column, int row, Sign sign, Style style) {
        return write(column, row, sign.in(alphabet), style);
    }

    public void fill(Rect part, Sign sign, Style style) {
        forEach(part, index -> set(index, sign.in(alphabet), style));
    }

    public void clear(Rect part) {
        forEach(part, index -> set(index, BLANK, Style.INK));
    }

    public void restyle(Rect part, UnaryOperator<Style> change) {
        forEach(part, index -> styles[index] = change.apply(styles[index]));
    }

    /** The character of a cell; 0 in the second cell of a wide one. */
    public int codePoint(int column, int row) {
        return codePoints[index(column, row)];
    }

    public Style style(int column, int row) {
        return styles[index(column, row)];
    }

    /** The picture as text, one line a row, each exactly as wide as the grid. */
    public String text() {
        return picture(row -> IntStream.range(0, size.columns())
                .map(column -> codePoint(column, row))
                .filter(codePoint -> codePoint != CONTINUED)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString());
    }

    /** The picture's styles, a letter a cell ({@link Style#letter}). */
    public String styles() {
        return picture(row -> IntStream.range(0, size.columns())
                .mapToObj(column -> String.valueOf(style(column, row).letter()))
                .collect(Collectors.joining()));
    }

    private String picture(IntFunction<String> line) {
        return IntStream.range(0, size.rows()).mapToObj(line).collect(Collectors.joining("\n"));
    }

    private int write(int column, int row, int codePoint, Style style) {
        int after = column + Width.of(codePoint);
        if (!area.contains(column, row)) {
            return after;
        }
        boolean whole = area.contains(after - 1, row);
        set(index(column, row), whole ? codePoint : BLANK, style);
        if (whole && after - column == 2) {
            set(index(column + 1, row), CONTINUED, style);
        }
        return after;
    }

    /** Sets one cell; where it was half of a wide character the other half becomes blank. */
    private void set(int index, int codePoint, Style style) {
        boolean wasSecond = codePoints[index] == CONTINUED;
        if (wasSecond && codePoint != CONTINUED) {
            codePoints[index - 1] = BLANK;
        }
        if (isFirstOfTwo(index)) {
            codePoints[index + 1] = BLANK;
        }
        codePoints[index] = codePoint;
        styles[index] = style;
    }

    private boolean isFirstOfTwo(int index) {
        boolean lastOfRow = (index + 1) % size.columns() == 0;
        return !lastOfRow && codePoints[index + 1] == CONTINUED && codePoints[index] != CONTINUED;
    }

    private void forEach(Rect part, IntConsumer cell) {
        Rect inside = part.intersect(area);
        for (int row = inside.row(); row < inside.bottom(); row++) {
            for (int column = inside.column(); column < inside.right(); column++) {
                cell.accept(index(column, row));
            }
        }
    }

    private int index(int column, int row) {
        return row * size.columns() + column;
    }
}
