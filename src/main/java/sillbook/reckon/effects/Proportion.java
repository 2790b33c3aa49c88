// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * So many of so many.
 *
 * @param hits 0 up to {@code of}
 */
public record Proportion(int hits, int of) {
    public Proportion {
        if (hits < 0 || hits > of) {
            throw new IllegalArgumentException(hits + " of " + of);
        }
    }

    public Proportion plus(Proportion other) {
        return new Proportion(hits + other.hits, of + other.of);
    }

    /**
     * E. B. Wilson's score interval (Journal of the American Statistical Association 22, 1927, 209-212), without
     * correction for continuity: for few trials it keeps its promise better on the average than the exact one (L. D.
     * Brown, T. T. Cai and A. DasGupta, Statistical Science 16, 2001, 101-133).
     *
     * @param chance that it holds the true share, as 0.95
     * @return of shares, 0 to 1; empty when there was no trial
     */
    public Optional<Interval> interval(double chance) {
        if (of == 0) {
            return Optional.empty();
        }
        double z = new NormalDistribution().inverseCumulativeProbability((1 + chance) / 2);
        double share = (double) hits / of;
        double shrunk = 1 + z * z / of;
        double middle = (share + z * z / (2 * of)) / shrunk;
        double half = z * Math.sqrt(share * (1 - share) / of + z * z / (4.0 * of * of)) / shrunk;
        // At the ends the sum is 0 or 1 but for rounding.
        return Optional.of(new Interval(Math.max(0, middle - half), Math.min(1, middle + half)));
    }
}
