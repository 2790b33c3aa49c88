// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/**
 * How far a list is scrolled.
 *
 * @param first the index of the line that stands on top
 */
public record Scroll(int first) {
    public static final Scroll TOP = new Scroll(0);
    /** Lines kept in sight above and below the cursor's, where there is room for them. */
    private static final int MARGIN = 2;

    /** Scrolled no further than needed to keep the cursor's line, and two lines around it, within so many rows. */
    public Scroll follow(int cursor, int count, int rows) {
        int margin = Math.min(MARGIN, Math.max(0, (rows - 1) / 2));
        int highest = Math.max(0, cursor - margin);
        int lowest = cursor + margin + 1 - rows;
        int wanted = Math.max(lowest, Math.min(highest, first));
        return new Scroll(Math.max(0, Math.min(wanted, count - rows)));
    }
}
