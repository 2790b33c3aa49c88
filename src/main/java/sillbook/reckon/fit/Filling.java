// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

/**
 * What a pot takes.
 *
 * @param brim its volume, in cm3
 * @param filled its volume up to where the potting mix ends, in cm3
 */
public record Filling(double brim, double filled) {
    /** Half an inch below the rim, for water (Iowa State University Extension), in cm. */
    public static final double BELOW_RIM = 1.3;

    /** Of a pot whose shape is known, which is filled to so many cm below its rim. */
    public static Filling of(Frustum pot, double below) {
        return new Filling(
                pot.volume(), below < pot.height() ? pot.filledTo(below).volume() : 0);
    }

    /**
     * Of a pot of which the volume was measured; near the rim it is taken to go straight down.
     *
     * @param volume in cm3
     * @param across in cm
     */
    public static Filling measured(double volume, double across, double below) {
        return new Filling(volume, Math.max(0, volume - Math.PI * across * across / 4 * below));
    }

    /**
     * What is left for potting mix beside bulbs, in cm3; 0 where they fill it.
     *
     * @param bulbs what they take, in cm3
     */
    public double mix(double bulbs) {
        return Math.max(0, filled - bulbs);
    }

    /** What a bulb takes, taken for a ball, in cm3. */
    public static double ball(double diameter) {
        return Math.PI * diameter * diameter * diameter / 6;
    }
}
