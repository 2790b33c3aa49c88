// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

/**
 * How likely each whole day is. Day {@code k} stands for all lengths from k - 0.5 up to k + 0.5, which adds 1/12 to the
 * variance each time a length is cut so (Sheppard 1898).
 *
 * <p>Added up as if the stages had nothing to do with each other. Stages in one room share its weather, so that sums come
 * out a little too narrow.
 */
public final class DayChances {
    /** What lies beyond this chance at either end is counted to the last day there. */
    private static final double TAIL = 1e-6;

    private static final int MOST_DAYS = 20_000;

    private static final double EARLIEST = 0.1;
    private static final double LIKELY = 0.5;
    private static final double LATEST = 0.9;

    /** What sums of chances are off by; a chance that is met but for this is met. */
    private static final double ROUNDING = 1e-12;

    private final int first;
    private final double[] chances;

    private DayChances(int first, double[] chances) {
        this.first = first;
        this.chances = chances;
    }

    /**
     * A length cut into days.
     *
     * @throws IllegalArgumentException when it reaches over more than 20,000 of them
     */
    public static DayChances of(Distribution length) {
        int first = day(length.quantile(TAIL));
        int last = Math.max(first, day(length.quantile(1 - TAIL)));
        if (last - first >= MOST_DAYS) {
            throw new IllegalArgumentException("too wide a length: " + length);
        }
        double[] chances = new double[last - first + 1];
        double before = 0;
        for (int i = 0; i < chances.length; i++) {
            double upTo = first + i == last ? 1 : length.cumulative(first + i + 0.5);
            chances[i] = upTo - before;
            before = upTo;
        }
        return new DayChances(first, chances);
    }

    /** A day that is known. */
    public static DayChances on(int day) {
        return new DayChances(day, new double[] {1});
    }

    private static int day(double days) {
        return Math.toIntExact((long) Math.floor(days + 0.5));
    }

    /** When it is reached after this and the other, one upon the other. */
    public DayChances plus(DayChances other) {
        double[] sum = new double[chances.length + other.chances.length - 1];
        for (int i = 0; i < chances.length; i++) {
            for (int j = 0; j < other.chances.length; j++) {
                sum[i + j] += chances[i] * other.chances[j];
            }
        }
        return new DayChances(first + other.first, sum);
    }

    /** By how much a second stage moves the days of the first: the window of both, less that of the first alone. */
    public DayWindow added(DayChances second) {
        DayWindow alone = window();
        DayWindow both = plus(second).window();
        int likely = both.likely() - alone.likely();
        return new DayWindow(
                Math.max(0, Math.min(likely, both.earliest() - alone.earliest())),
                likely,
                Math.max(likely, both.latest() - alone.latest()));
    }

    /** The same, so many days later. */
    public DayChances later(int days) {
        return new DayChances(first + days, chances);
    }

    /** The same, with what lies before a day counted to that day. */
    public DayChances notBefore(int day) {
        if (day <= first) {
            return this;
        }
        int last = Math.max(day, first + chances.length - 1);
        double[] cut = new double[last - day + 1];
        for (int i = 0; i < chances.length; i++) {
            cut[Math.max(0, first + i - day)] += chances[i];
        }
        return new DayChances(day, cut);
    }

    /** The chance that it is this very day. */
    public double chanceOn(int day) {
        int at = day - first;
        return at >= 0 && at < chances.length ? chances[at] : 0;
    }

    /** The chance that it is this day or one before. */
    public double chanceBy(int day) {
        double sum = 0;
        for (int at = 0; at < chances.length && first + at <= day; at++) {
            sum += chances[at];
        }
        return sum;
    }

    /** The chance that what begins so, and then lasts so many days, is under way on a day: in bloom, say. */
    public double chanceUnderWay(int day, int lasts) {
        return chanceBy(day) - chanceBy(day - lasts);
    }

    /** The first day by which it is reached with a chance. */
    public int quantile(double chance) {
        double left = Distribution.checked(chance) - ROUNDING;
        int at = 0;
        while (at < chances.length - 1 && left > chances[at]) {
            left -= chances[at];
            at++;
        }
        return first + at;
    }

    /** The days reached with a chance of 10, 50 and 90 in a hundred. */
    public DayWindow window() {
        return new DayWindow(quantile(EARLIEST), quantile(LIKELY), quantile(LATEST));
    }

    public double mean() {
        double sum = 0;
        for (int at = 0; at < chances.length; at++) {
            sum += (first + at) * chances[at];
        }
        return sum;
    }

    /** In days squared. */
    public double variance() {
        double mean = mean();
        double sum = 0;
        for (int at = 0; at < chances.length; at++) {
            double off = first + at - mean;
            sum += off * off * chances[at];
        }
        return sum;
    }

    /**
     * From the day by which it has happened in one of ten cases, over the middle one, to that by which it has in nine of
     * ten.
     */
    public record DayWindow(int earliest, int likely, int latest) {}
}
