// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

/**
 * How long something takes, in whole days: the shortest published, the usual, the longest published.
 *
 * @param low days, at least 0
 * @param typical days, from low to high
 * @param high days
 */
public record DayCount(int low, int typical, int high) {
    /** Ten years; no stage of a bulb in a pot lasts longer, and sums of days stay far from overflow. */
    static final int LONGEST = 3653;

    public static final DayCount ZERO = new DayCount(0, 0, 0);

    public DayCount {
        if (!(0 <= low && low <= typical && typical <= high && high <= LONGEST)) {
            throw new IllegalArgumentException("no length of time: " + low + ", " + typical + ", " + high + " days");
        }
    }

    public static DayCount of(int low, int typical, int high) {
        return new DayCount(low, typical, high);
    }

    /** A length that is the same at its shortest and at its longest. */
    public static DayCount of(int only) {
        return new DayCount(only, only, only);
    }

    /** From days that may have a fraction; half a day rounds up. */
    public static DayCount ofDays(double low, double typical, double high) {
        return new DayCount(wholeDays(low), wholeDays(typical), wholeDays(high));
    }

    /** From weeks that may have a fraction; half a day rounds up. */
    public static DayCount ofWeeks(double low, double typical, double high) {
        return new DayCount(daysOfWeeks(low), daysOfWeeks(typical), daysOfWeeks(high));
    }

    /**
     * Weeks as whole days; half a day rounds up.
     *
     * @throws IllegalArgumentException when it is no number, below 0 or above ten years
     */
    public static int daysOfWeeks(double weeks) {
        return wholeDays(weeks * 7);
    }

    private static int wholeDays(double days) {
        if (!(days >= 0 && days <= LONGEST)) {
            throw new IllegalArgumentException("no number of days: " + days);
        }
        return (int) Math.floor(days + 0.5);
    }

    /** Each of the three less so many days, but never under 0. */
    DayCount less(int days) {
        return new DayCount(Math.max(0, low - days), Math.max(0, typical - days), Math.max(0, high - days));
    }

    /** What is left of each of the three when its like is taken away, which may not be longer. */
    DayCount less(DayCount part) {
        return new DayCount(low - part.low, typical - part.typical, high - part.high);
    }

    /** What this takes of a whole: no longer than that, and no less certain, so that a rest is left. */
    DayCount partOf(DayCount whole) {
        DayCount part = atMost(whole);
        int leastLow = part.typical - (whole.typical - whole.low);
        int mostHigh = part.typical + (whole.high - whole.typical);
        return new DayCount(Math.max(part.low, leastLow), part.typical, Math.min(part.high, mostHigh));
    }

    /** Each of the three, or its like where that is smaller. */
    DayCount atMost(DayCount other) {
        return new DayCount(Math.min(low, other.low), Math.min(typical, other.typical), Math.min(high, other.high));
    }

    /** Each of the three, or its like where that is greater. */
    DayCount atLeast(DayCount other) {
        return new DayCount(Math.max(low, other.low), Math.max(typical, other.typical), Math.max(high, other.high));
    }
}
