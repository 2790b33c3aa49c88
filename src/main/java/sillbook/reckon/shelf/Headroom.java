// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

/**
 * What is over a shelf, against what stands there.
 *
 * @param clear from the shelf to what is over it, in cm
 * @param pot its height in cm, not below 0
 * @param shoot how high it stands over the rim, or will, in cm, not below 0
 */
public record Headroom(double clear, double pot, double shoot) {
    public Headroom {
        if (!(clear > 0) || !(pot >= 0) || !(shoot >= 0)) {
            throw new IllegalArgumentException(clear + " cm over a pot of " + pot + " with a shoot of " + shoot);
        }
    }

    public double needed() {
        return pot + shoot;
    }

    /** What is left over the shoot, in cm; below 0 where it does not stand upright. */
    public double left() {
        return clear - needed();
    }

    public boolean isEnough() {
        return left() >= 0;
    }
}
