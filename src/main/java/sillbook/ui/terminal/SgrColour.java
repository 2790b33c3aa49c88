// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import sillbook.ui.draw.Colour;

/** Colours as parameters of the sequence that selects graphic rendition. */
final class SgrColour {
    private static final int FOREGROUND = 30;
    private static final int BACKGROUND = 40;
    private static final int BRIGHT = 60;

    private SgrColour() {}

    static String foreground(Colour colour) {
        return parameter(colour, FOREGROUND);
    }

    static String background(Colour colour) {
        return parameter(colour, BACKGROUND);
    }

    private static String parameter(Colour colour, int ground) {
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
        return String.valueOf(ground + 9);
    }
}
