// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import org.hipparchus.distribution.continuous.NormalDistribution;

/** The normal distribution's chances from a table, right to 1e-7: millions are asked for. */
final class Normal {
    private static final int STEPS_A_UNIT = 1000;
    private static final int END = 6;
    private static final double[] TABLE = table();

    private Normal() {}

    private static double[] table() {
        NormalDistribution normal = new NormalDistribution();
        double[] table = new double[2 * END * STEPS_A_UNIT + 1];
        for (int i = 0; i < table.length; i++) {
            table[i] = normal.cumulativeProbability((double) i / STEPS_A_UNIT - END);
        }
        return table;
    }

    /** The chance of being at or below {@code value}; with an sd of 0 it is 0, one half or 1. */
    static double below(double value, double mean, double sd) {
        if (value == mean) {
            return 0.5;
        }
        double z = (value - mean) / sd;
        if (Math.abs(z) >= END) {
            return z < 0 ? 0 : 1;
        }
        double at = (z + END) * STEPS_A_UNIT;
        int left = (int) at;
        return TABLE[left] + (at - left) * (TABLE[left + 1] - TABLE[left]);
    }
}
