// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

/**
 * Ground that is the same all the way down.
 *
 * @param diffusivity of its heat, in m2/s, above 0
 */
public record Ground(double diffusivity) {
    /** Between sand, clay and peat as they are in a wet winter; a judgement of ours. */
    public static final double USUAL_DIFFUSIVITY = 0.5e-6;

    private static final double SECONDS_IN_DAY = 86_400;

    public Ground {
        if (!(diffusivity > 0)) {
            throw new IllegalArgumentException("a diffusivity of " + diffusivity);
        }
    }

    /** The depth in m at which a wave of that many days is down to 1/e, 37 %. */
    public double dampingDepth(double days) {
        return Math.sqrt(diffusivity * days * SECONDS_IN_DAY / Math.PI);
    }

    /** What is left at a depth in m of a wave of that many days, 0 to 1. */
    public double left(double depth, double days) {
        return Math.exp(-depth / dampingDepth(days));
    }

    /** The wave of the surface as it is at a depth in m. */
    public YearlyWave at(double depth, YearlyWave surface) {
        return surface.damped(left(depth, YearlyWave.YEAR), lag(depth));
    }

    /** How many days later than on the surface it is coldest at a depth in m. */
    public double lag(double depth) {
        return depth / dampingDepth(YearlyWave.YEAR) * YearlyWave.YEAR / (2 * Math.PI);
    }

    /** The depth in m from which on the yearly wave stays above a temperature; none deep enough is endless. */
    public double depthAbove(double celsius, YearlyWave surface) {
        if (surface.minimum() > celsius) {
            return 0;
        }
        return surface.mean() <= celsius
                ? Double.POSITIVE_INFINITY
                : dampingDepth(YearlyWave.YEAR) * Math.log(surface.amplitude() / (surface.mean() - celsius));
    }
}
