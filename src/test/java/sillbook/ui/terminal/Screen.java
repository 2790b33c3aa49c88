// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sillbook.text.Width;
import sillbook.ui.draw.Colour;
import sillbook.ui.draw.Paint;
import sillbook.ui.draw.Size;

/** A terminal for tests: reads bytes as one would and refuses every sequence that a frame has no business with. */
final class Screen {
    private static final Pattern SEQUENCE = Pattern.compile("\u001B\\[(\\??)([0-9;]*)([A-Za-z])");
    private static final Paint PLAIN = new Paint(Colour.OWN, Colour.OWN, false, false, false);

    private final Size size;
    private final int[][] codePoints;
    private final Paint[][] paints;
    private int column;
    private int row;
    private Paint paint = PLAIN;
    private boolean cursorShown = true;

    Screen(Size size) {
        this.size = size;
        codePoints = new int[size.rows()][size.columns()];
        paints = new Paint[size.rows()][size.columns()];
        Arrays.stream(codePoints).forEach(line -> Arrays.fill(line, '#'));
        Arrays.stream(paints).forEach(line -> Arrays.fill(line, PLAIN));
    }

    void read(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        Matcher sequences = SEQUENCE.matcher(text);
        int at = 0;
        while (at < text.length()) {
            if (sequences.region(at, text.length()).lookingAt()) {
                obey(sequences.group(1), sequences.group(2), sequences.group(3));
                at = sequences.end();
            } else {
                int codePoint = text.codePointAt(at);
                write(codePoint);
                at += Character.charCount(codePoint);
            }
        }
    }

    int codePoint(int ofColumn, int ofRow) {
        return codePoints[ofRow][ofColumn];
    }

    Paint paint(int ofColumn, int ofRow) {
        return paints[ofRow][ofColumn];
    }

    /** As {@code column,row}, or {@code hidden}. */
    String cursor() {
        return cursorShown ? column + "," + row : "hidden";
    }

    private void obey(String mark, String parameters, String letter) {
        switch (mark + letter) {
            case "H" -> {
                List<String> place = List.of((parameters + ";").split(";", -1));
                row = number(place.get(0)) - 1;
                column = number(place.get(1)) - 1;
            }
            case "C" -> column = Math.min(size.columns() - 1, column + number(parameters));
            case "K" -> erase(row, column);
            case "J" -> eraseAll(parameters);
            case "m" -> select(new ArrayDeque<>(List.of(parameters.split(";", -1))));
            case "?h", "?l" -> mode(parameters, letter.equals("h"));
            default -> throw new AssertionError("no frame may hold ESC [ " + mark + parameters + letter);
        }
    }

    private static int number(String parameter) {
        return parameter.isEmpty() ? 1 : Integer.parseInt(parameter);
    }

    private void mode(String parameters, boolean on) {
        if (parameters.equals("25")) {
            cursorShown = on;
        } else if (!parameters.equals("2026")) {
            throw new AssertionError("no frame may set mode " + parameters);
        }
    }

    private void eraseAll(String parameters) {
        if (!parameters.equals("2")) {
            throw new AssertionError("only the whole screen is cleared, not " + parameters);
        }
        for (int line = 0; line < size.rows(); line++) {
            erase(line, 0);
        }
    }

    private void erase(int line, int from) {
        for (int at = from; at < size.columns(); at++) {
            codePoints[line][at] = ' ';
            paints[line][at] = new Paint(Colour.OWN, paint.background(), false, false, false);
        }
    }

    private void write(int codePoint) {
        if (codePoint < ' ' || codePoint == 0x7F || column >= size.columns()) {
            throw new AssertionError("character " + codePoint + " at " + cursor());
        }
        int width = Width.of(codePoint);
        codePoints[row][column] = codePoint;
        paints[row][column] = paint;
        if (width == 2) {
            codePoints[row][column + 1] = 0;
            paints[row][column + 1] = paint;
        }
        column += width;
    }

    private void select(Deque<String> parameters) {
        while (!parameters.isEmpty()) {
            String first = parameters.removeFirst();
            select(first.isEmpty() ? 0 : Integer.parseInt(first), parameters);
        }
    }

    private void select(int parameter, Deque<String> rest) {
        Paint now = paint;
        Colour front = now.foreground();
        Colour back = now.background();
        paint = switch (parameter) {
            case 0 -> PLAIN;
            case 1 -> new Paint(front, back, true, now.dim(), now.underlined());
            case 2 -> new Paint(front, back, now.bold(), true, now.underlined());
            case 22 -> new Paint(front, back, false, false, now.underlined());
            case 4 -> new Paint(front, back, now.bold(), now.dim(), true);
            case 24 -> new Paint(front, back, now.bold(), now.dim(), false);
            case 38, 39 -> new Paint(colour(parameter, 38, rest), back, now.bold(), now.dim(), now.underlined());
            case 48, 49 -> new Paint(front, colour(parameter, 48, rest), now.bold(), now.dim(), now.underlined());
            default -> new Paint(basic(parameter), back, now.bold(), now.dim(), now.underlined());
        };
    }

    private static Colour colour(int parameter, int extended, Deque<String> rest) {
        if (parameter != extended) {
            return Colour.OWN;
        }
        if (rest.removeFirst().equals("5")) {
            return new Colour.Indexed(Integer.parseInt(rest.removeFirst()));
        }
        int red = Integer.parseInt(rest.removeFirst());
        int green = Integer.parseInt(rest.removeFirst());
        return new Colour.Direct(red << 16 | green << 8 | Integer.parseInt(rest.removeFirst()));
    }

    private static Colour basic(int parameter) {
        return new Colour.Basic(parameter >= 90 ? parameter - 90 + 8 : parameter - 30);
    }
}
