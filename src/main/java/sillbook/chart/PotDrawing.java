// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.util.List;

/**
 * A pot and how its bulbs sit, in cm.
 *
 * @param across the inside at the depth of the bulbs, above 0
 * @param bulb the diameter of a bulb, above 0
 * @param bulbs their middles from the middle of the pot, y growing towards the back
 * @param side the pot from the side
 */
public record PotDrawing(double across, double bulb, List<Middle> bulbs, Side side) {
    public PotDrawing {
        if (!(across > 0) || !(bulb > 0)) {
            throw new IllegalArgumentException("bulbs of " + bulb + " cm in a pot of " + across);
        }
        bulbs = List.copyOf(bulbs);
    }

    /** The middle of a bulb. */
    public record Middle(double x, double y) {}

    /**
     * A pot from the side, in cm.
     *
     * @param height above 0
     * @param base width of its bottom inside
     * @param surface how far the potting mix ends below the rim
     * @param tips how far the bulbs reach above the potting mix; below 0 where they are covered
     */
    public record Side(double height, double base, double surface, double tips) {
        public Side {
            if (!(height > 0) || !(base > 0)) {
                throw new IllegalArgumentException("a pot of " + height + " by " + base + " cm");
            }
        }
    }
}
