// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

/** How likely a length is to be this long or that, in days. */
public interface Distribution {
    double mean();

    /** In days squared; infinite where the tails are too heavy for one. */
    double variance();

    /** The chance of at most so many days. */
    double cumulative(double days);

    /**
     * The days that are not exceeded with a chance.
     *
     * @param chance between 0 and 1, both left out
     * @throws IllegalArgumentException when it is not
     */
    double quantile(double chance);

    /**
     * The chance, when it is one that has a quantile.
     *
     * @throws IllegalArgumentException when it is not
     */
    static double checked(double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new IllegalArgumentException("no chance between 0 and 1: " + chance);
        }
        return chance;
    }
}
