// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** A colour, in one of the ways terminals name them. */
public sealed interface Colour {
    /** The terminal's own foreground or background. */
    Colour OWN = Own.OWN;

    /** The terminal's own. */
    enum Own implements Colour {
        OWN
    }

    /** One of the 16 that each terminal sets for itself. */
    record Basic(int number) implements Colour {
        public Basic {
            requireIn(number, 15);
        }
    }

    /** One of the fixed table of 256. */
    record Indexed(int number) implements Colour {
        public Indexed {
            requireIn(number, 255);
        }
    }

    /** Red, green and blue as 0xRRGGBB. */
    record Direct(int rgb) implements Colour {
        public Direct {
            requireIn(rgb, 0xFFFFFF);
        }
    }

    private static void requireIn(int value, int highest) {
        if (value < 0 || value > highest) {
            throw new IllegalArgumentException(value + " is no colour from 0 to " + highest);
        }
    }
}
