// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

/**
 * A layer on the ground that holds heat back and stores none; reckoned as if it lay there all year, so only roughly true of straw or snow.
 *
 * @param thickness in m, not below 0
 * @param conductivity in W/m/K, above 0
 */
public record Mulch(double thickness, double conductivity) {
    public Mulch {
        if (!(thickness >= 0) || !(conductivity > 0)) {
            throw new IllegalArgumentException(thickness + " m of " + conductivity + " W/m/K");
        }
    }

    /** How much it holds back a wave of so many days, against ground of that conductivity in W/m/K. */
    double weight(Ground ground, double groundConductivity, double days) {
        return thickness / conductivity * groundConductivity / ground.dampingDepth(days);
    }

    /** What it leaves of a wave of so many days, 0 to 1. */
    public double left(Ground ground, double groundConductivity, double days) {
        double weight = weight(ground, groundConductivity, days);
        return 1 / Math.sqrt((1 + weight) * (1 + weight) + weight * weight);
    }

    /** How many days it makes such a wave late. */
    public double lag(Ground ground, double groundConductivity, double days) {
        double weight = weight(ground, groundConductivity, days);
        return Math.atan(weight / (1 + weight)) * days / (2 * Math.PI);
    }

    /** The surface of the ground under it. */
    public YearlyWave under(YearlyWave air, Ground ground, double groundConductivity) {
        return air.damped(
                left(ground, groundConductivity, YearlyWave.YEAR), lag(ground, groundConductivity, YearlyWave.YEAR));
    }
}
