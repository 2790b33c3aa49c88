// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * How likely the ground freezes in the coldest days of the year: the yearly wave, and spells of ten days about it, normal, damped as waves of ten days are.
 *
 * @param surface of the ground, under its mulch if it has one
 * @param spellSd how far the mean of ten days lies from the wave at that surface, in C, as a standard deviation, above 0
 */
public record FrostChance(YearlyWave surface, Ground ground, double spellSd) {
    /** In a lowland winter away from the sea; a judgement of ours. */
    public static final double USUAL_SPELL_SD = 3;

    /** A depth is called safe where it freezes in one winter of twenty at most; a judgement of ours. */
    public static final double SAFE = 0.05;

    /** How long a spell is, in days. */
    public static final double SPELL = 10;

    private static final double DEEPEST = 20;
    private static final double FINE = 1e-4;

    public FrostChance {
        if (!(spellSd > 0)) {
            throw new IllegalArgumentException("spells of " + spellSd + " C");
        }
    }

    /** At a depth in m, 0 to 1. */
    public double at(double depth) {
        double sd = spellSd * ground.left(depth, SPELL);
        double lowest = ground.at(depth, surface).minimum();
        if (sd < FINE) {
            return lowest < 0 ? 1 : 0;
        }
        return new NormalDistribution(lowest, sd).cumulativeProbability(0);
    }

    /** The least depth in m that is safe; endless where the year's mean is at freezing or below. */
    public double safeDepth() {
        double shallow = 0;
        double deep = DEEPEST;
        if (at(shallow) <= SAFE) {
            return shallow;
        }
        if (at(deep) > SAFE) {
            return Double.POSITIVE_INFINITY;
        }
        while (deep - shallow > FINE) {
            double middle = (shallow + deep) / 2;
            if (at(middle) > SAFE) {
                shallow = middle;
            } else {
                deep = middle;
            }
        }
        return deep;
    }
}
