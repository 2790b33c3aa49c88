// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

/**
 * How far apart bulbs stand.
 *
 * @param gap between two bulbs, in cm, not below 0
 * @param wall between a bulb and the wall, in cm, not below 0
 */
public record Spacing(double gap, double wall) {
    /** Two pencils apart and one from the wall: the wide end of "one or two pencils" (University of Nebraska, Lincoln, Extension). */
    public static final Spacing AIRY = new Spacing(1.4, 0.7);

    /** As close as published counts set them in a pot of six inches, give or take a bulb; a judgement of ours. */
    public static final Spacing PACKED = new Spacing(0.5, 0.25);

    /** Not a hair between: the ceiling, at which nobody plants. */
    public static final Spacing TOUCHING = new Spacing(0, 0);

    /** Where nothing is said; a judgement of ours. */
    public static final Spacing USUAL = new Spacing(0.5, 0.5);

    public Spacing {
        if (!(gap >= 0 && wall >= 0) || Double.isInfinite(gap + wall)) {
            throw new IllegalArgumentException(gap + " cm apart, " + wall + " cm from the wall");
        }
    }
}
