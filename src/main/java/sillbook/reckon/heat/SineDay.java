// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.heat;

/**
 * A day whose temperature swings as one sine wave between its lowest and its highest, in degrees of one scale (W. G. Baskerville and P. Emin, Ecology 50, 1969; J. C.
 * Allen, Environmental Entomology 5, 1976).
 */
public record SineDay(double lowest, double highest) {
    private static final double HOURS = 24;

    public SineDay {
        if (!(lowest <= highest)) {
            throw new IllegalArgumentException("a day from " + lowest + " up to " + highest);
        }
    }

    /** Degree-days above a threshold: the mean over the day of what it is warmer, nothing where it is colder. */
    public double degreesAbove(double threshold) {
        if (highest <= threshold) {
            return 0;
        }
        if (lowest >= threshold) {
            return middle() - threshold;
        }
        double from = Math.asin((threshold - middle()) / swing());
        return ((middle() - threshold) * (Math.PI / 2 - from) + swing() * Math.cos(from)) / Math.PI;
    }

    /** The same, what is warmer than a second threshold counting as if it were that. */
    public double degreesBetween(double threshold, double cutOff) {
        return degreesAbove(threshold) - degreesAbove(cutOff);
    }

    /** Hours warmer than a threshold, 0 to 24; of a day that never changes, none at just that. */
    public double hoursAbove(double threshold) {
        if (highest <= threshold) {
            return 0;
        }
        return lowest >= threshold ? HOURS : HOURS * (0.5 - Math.asin((threshold - middle()) / swing()) / Math.PI);
    }

    private double middle() {
        return (highest + lowest) / 2;
    }

    private double swing() {
        return (highest - lowest) / 2;
    }
}
