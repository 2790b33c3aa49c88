// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What every level of every factor does to the score.
 *
 * @param mean of the score, all factors being average
 * @param factors in the design's order
 * @param residual sd of what no factor explains
 * @param criterion -2 log restricted likelihood; where one set of variances was chosen
 * @param effectiveSize how many equally weighted points the average is worth; where it was averaged
 */
public record Effects(
        Estimate mean,
        List<FactorEffects> factors,
        double residual,
        OptionalDouble criterion,
        OptionalDouble effectiveSize) {
    public Effects {
        factors = List.copyOf(factors);
    }

    public FactorEffects factor(String name) {
        return factors.stream()
                .filter(factor -> factor.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no factor " + name));
    }
}
