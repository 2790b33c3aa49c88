// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import java.util.List;

/** How many of several things happen that have nothing to do with each other, each with a chance of its own (S. D. Poisson, Recherches sur la probabilité des jugements, 1837). */
public final class Several {
    /** The chance of none, of one, and so on; the last of as many as are wanted or more. */
    private final double[] counts;

    private Several(double[] counts) {
        this.counts = counts;
    }

    /** @param wanted how many at most are of interest, at least 0 */
    static Several of(int wanted, List<Double> chances) {
        double[] none = new double[wanted + 1];
        none[0] = 1;
        return new Several(none).and(chances);
    }

    /** With others among them. */
    Several and(List<Double> chances) {
        double[] now = counts.clone();
        int wanted = now.length - 1;
        for (double chance : chances) {
            for (int count = wanted; count > 0; count--) {
                double stays = count == wanted ? now[count] : now[count] * (1 - chance);
                now[count] = stays + now[count - 1] * chance;
            }
            now[0] *= wanted == 0 ? 1 : 1 - chance;
        }
        return new Several(now);
    }

    /** The chance that at least as many happen as are wanted. */
    double enough() {
        return counts[counts.length - 1];
    }

    /** The chance that at least so many of them happen. */
    public static double atLeast(int wanted, List<Double> chances) {
        return of(wanted, chances).enough();
    }
}
