// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

/** Adds up stretches in which the temperature goes evenly, one after the other; exact for that. It is for millions of them, and makes no objects. */
public final class ColdTally {
    private double hours;
    private double effective;
    private double published;
    private double freezing;
    private double warm;
    private double degreeHours;
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;

    /**
     * So many hours from one temperature to another, in C.
     *
     * @param more above 0
     */
    public void add(double start, double end, double more) {
        hours += more;
        effective += more * ColdWeight.USUAL.between(start, end);
        published += more * PublishedCount.HOURS.between(start, end);
        freezing += more * Stretch.shareBelow(start, end, 0);
        warm += more * Stretch.shareBelow(-start, -end, -WarmSpell.ABOVE);
        degreeHours += more * (start + end) / 2;
        lowest = Math.min(lowest, Math.min(start, end));
        highest = Math.max(highest, Math.max(start, end));
    }

    /** Hours added up. */
    public double hours() {
        return hours;
    }

    /** Of these, what counts by the usual weight. */
    public double effective() {
        return effective;
    }

    /** Of these, what counts where published schedules are meant. */
    public double published() {
        return published;
    }

    /** Hours below 0 C. */
    public double freezing() {
        return freezing;
    }

    /** Hours above 13 C. */
    public double warm() {
        return warm;
    }

    /** In C, like the two that follow; there must be some hours. */
    public double mean() {
        return Math.max(lowest, Math.min(highest, degreeHours / hours));
    }

    public double lowest() {
        return lowest;
    }

    public double highest() {
        return highest;
    }
}
