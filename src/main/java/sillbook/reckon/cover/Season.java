// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/**
 * The days that should have something in bloom, counted from any day; both ends are in.
 *
 * @param first no later than last
 * @param last at most {@value #LONGEST} days after first
 */
public record Season(int first, int last) {
    /** More days than a winter has, and as many as a search takes on. */
    public static final int LONGEST = 400;

    public Season {
        Limits.day("season's first day", first);
        Limits.day("season's last day", last);
        if (last < first) {
            throw new Unreckonable("the season ends on day " + last + ", before it starts on day " + first);
        }
        if (last - first >= LONGEST) {
            throw new Unreckonable("the season is longer than " + LONGEST + " days");
        }
    }

    public int days() {
        return last - first + 1;
    }
}
