// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import java.util.List;

/** How many of several things happen that have nothing to do with each other, each with a chance of its own (S. D. Poisson, Recherches sur la probabilité des jugements, 1837). */
public final class Several {
    private Several() {}

    /** The chance that at least so many of them happen. */
    public static double atLeast(int wanted, List<Double> chances) {
        double[] fewer = new double[wanted + 1];
        fewer[0] = 1;
        for (double chance : chances) {
            for (int count = wanted; count > 0; count--) {
                double stays = count == wanted ? fewer[count] : fewer[count] * (1 - chance);
                fewer[count] = stays + fewer[count - 1] * chance;
            }
            fewer[0] *= wanted == 0 ? 1 : 1 - chance;
        }
        return fewer[wanted];
    }
}
