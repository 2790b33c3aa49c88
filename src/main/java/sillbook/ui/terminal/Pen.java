// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.text.Width;
import sillbook.ui.draw.Colour;
import sillbook.ui.draw.Paint;
import sillbook.ui.draw.Point;

/**
 * Writes for a terminal in the fewest bytes: it knows where the terminal's cursor stands and how it paints, and says only what changes.
 * Control sequences are those of ECMA-48, colours beyond it the ones of ISO 8613-6 as terminals write them.
 */
final class Pen {
    private static final Paint PLAIN = new Paint(Colour.OWN, Colour.OWN, false, false, false);

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private Optional<Point> place = Optional.empty();
    private Optional<Paint> paint = Optional.empty();

    /** What was written since the last time. */
    byte[] take() {
        byte[] written = out.toByteArray();
        out.reset();
        return written;
    }

    /** Empties the terminal; after this its paint is known, its cursor's place is not. */
    void clear() {
        raw("\u001B[m\u001B[2J");
        place = Optional.empty();
        paint = Optional.of(PLAIN);
    }

    void raw(String sequence) {
        bytes(sequence.getBytes(StandardCharsets.UTF_8));
    }

    void bytes(byte[] bytes) {
        out.write(bytes, 0, bytes.length);
    }

    void moveTo(Point target) {
        if (place.equals(Optional.of(target))) {
            return;
        }
        raw(place.filter(now -> now.row() == target.row() && now.column() < target.column())
                .map(now -> forward(target.column() - now.column()))
                .orElseGet(() -> absolute(target)));
        place = Optional.of(target);
    }

    void paint(Paint wanted) {
        if (paint.equals(Optional.of(wanted))) {
            return;
        }
        String anew = sgr(parameters(PLAIN, wanted, "0"));
        String changed = paint.map(now -> sgr(parameters(now, wanted, ""))).orElse(anew);
        raw(anew.length() < changed.length() ? anew : changed);
        paint = Optional.of(wanted);
    }

    /** Whether a blank painted so would look the same as one painted as it is now. */
    boolean leavesBlanksAs(Paint other) {
        return paint.filter(now -> Blanks.lookAlike(now, other)).isPresent();
    }

    boolean isPainting(Paint other) {
        return paint.equals(Optional.of(other));
    }

    Optional<Point> place() {
        return place;
    }

    /** Writes a character; where the cursor is after one whose width terminals do not agree on is not known. */
    void put(int codePoint, int columns) {
        raw(Character.toString(codePoint));
        int width = Width.of(codePoint);
        place = place.map(now -> new Point(now.column() + width, now.row()))
                .filter(after -> after.column() < columns && !Width.isDoubtful(codePoint));
    }

    void eraseRestOfLine() {
        raw("\u001B[K");
    }

    private static String forward(int columns) {
        return columns == 1 ? "\u001B[C" : "\u001B[" + columns + "C";
    }

    private static String absolute(Point target) {
        String column = target.column() == 0 ? "" : ";" + (target.column() + 1);
        String row = target.row() == 0 ? "" : String.valueOf(target.row() + 1);
        return "\u001B[" + row + column + "H";
    }

    private static String sgr(List<String> parameters) {
        String joined = String.join(";", parameters);
        return joined.equals("0") ? "\u001B[m" : "\u001B[" + joined + "m";
    }

    /** What must be said for a terminal that paints in one way to paint in the other. */
    private static List<String> parameters(Paint from, Paint to, String first) {
        List<String> said = new ArrayList<>();
        if (!first.isEmpty()) {
            said.add(first);
        }
        boolean lighter = (from.bold() && !to.bold()) || (from.dim() && !to.dim());
        add(said, "22", lighter);
        add(said, "1", to.bold() && (lighter || !from.bold()));
        add(said, "2", to.dim() && (lighter || !from.dim()));
        add(said, to.underlined() ? "4" : "24", from.underlined() != to.underlined());
        add(said, SgrColour.foreground(to.foreground()), !from.foreground().equals(to.foreground()));
        add(said, SgrColour.background(to.background()), !from.background().equals(to.background()));
        return said;
    }

    private static void add(List<String> said, String parameter, boolean needed) {
        if (needed) {
            said.add(parameter);
        }
    }
}
