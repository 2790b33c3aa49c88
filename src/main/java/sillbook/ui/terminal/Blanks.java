// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import sillbook.ui.draw.Colour;
import sillbook.ui.draw.Paint;

/** What can be seen of a blank: its ground and its underline, not the colour it would be written in. */
final class Blanks {
    private Blanks() {}

    static boolean lookAlike(Paint one, Paint other) {
        return one.background().equals(other.background()) && one.underlined() == other.underlined();
    }

    /** Whether erasing leaves the same as writing it. */
    static boolean isBare(Paint paint) {
        return paint.background() == Colour.OWN && !paint.underlined();
    }
}
