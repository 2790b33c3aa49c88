// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.ArrayList;
import java.util.List;
import sillbook.ui.draw.Colour;
import sillbook.ui.draw.Paint;

/**
 * A paint as parameters of the sequence that selects graphic rendition (ECMA-48; colours beyond its eight as ISO 8613-6 and terminals have
 * them).
 *
 * @param bold whether 1 is on, as {@code dim} is for 2
 * @param foreground its parameter, as is {@code background}
 */
record Rendition(boolean bold, boolean dim, boolean underlined, String foreground, String background) {
    private static final int FOREGROUND = 30;
    private static final int BACKGROUND = 40;
    private static final int BRIGHT = 60;
    private static final int OWN = 9;

    /** As after a terminal was told to forget all paint. */
    static final Rendition PLAIN = of(new Paint(Colour.OWN, Colour.OWN, false, false, false));

    static Rendition of(Paint paint) {
        return new Rendition(
                paint.bold(),
                paint.dim(),
                paint.underlined(),
                colour(paint.foreground(), FOREGROUND),
                colour(paint.background(), BACKGROUND));
    }

    /** The sequence from another paint to this: only what differs, or all of it from scratch, whichever is shorter. */
    String after(Rendition other) {
        String changed = sequence(differences(other));
        String anew = whole();
        return anew.length() < changed.length() ? anew : changed;
    }

    /** The sequence that says all of it, whatever was before. */
    String whole() {
        List<String> all = new ArrayList<>(List.of("0"));
        all.addAll(differences(PLAIN));
        return sequence(all);
    }

    /** Of a blank only its ground and its underline are seen. */
    boolean leavesBlanksAs(Rendition other) {
        return background.equals(other.background) && underlined == other.underlined;
    }

    private static String sequence(List<String> parameters) {
        String joined = String.join(";", parameters);
        return "\u001B[" + (joined.equals("0") ? "" : joined) + "m";
    }

    private List<String> differences(Rendition from) {
        List<String> said = new ArrayList<>();
        boolean lighter = (from.bold && !bold) || (from.dim && !dim);
        add(said, "22", lighter);
        add(said, "1", bold && (lighter || !from.bold));
        add(said, "2", dim && (lighter || !from.dim));
        add(said, underlined ? "4" : "24", from.underlined != underlined);
        add(said, foreground, !from.foreground.equals(foreground));
        add(said, background, !from.background.equals(background));
        return said;
    }

    private static void add(List<String> said, String parameter, boolean needed) {
        if (needed) {
            said.add(parameter);
        }
    }

    private static String colour(Colour colour, int ground) {
        if (colour instanceof Colour.Direct direct) {
            int rgb = direct.rgb();
            return (ground + 8) + ";2;" + (rgb >> 16) + ";" + (rgb >> 8 & 0xFF) + ";" + (rgb & 0xFF);
        }
        if (colour instanceof Colour.Indexed indexed) {
            return (ground + 8) + ";5;" + indexed.number();
        }
        if (colour instanceof Colour.Basic basic) {
            int number = basic.number();
            return String.valueOf(number < 8 ? ground + number : ground + BRIGHT + number - 8);
        }
        return String.valueOf(ground + OWN);
    }
}
