// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

/**
 * The inside of a pot: a cone cut off.
 *
 * @param top across the rim, in cm, above 0
 * @param bottom across the base, in cm, not below 0
 * @param height in cm, above 0
 */
public record Frustum(double top, double bottom, double height) {
    public Frustum {
        if (!(top > 0) || !(bottom >= 0) || !(height > 0) || Double.isInfinite(top + bottom + height)) {
            throw new IllegalArgumentException("a pot of " + top + " by " + bottom + " by " + height + " cm");
        }
    }

    /** To the brim, in cm3. */
    public double volume() {
        return Math.PI * height * (top * top + top * bottom + bottom * bottom) / 12;
    }

    /** How wide it is so many cm above its base. */
    public double across(double above) {
        return bottom + (top - bottom) * above / height;
    }

    /** The part up to a level below the rim, in cm; at most just above the base. */
    public Frustum filledTo(double below) {
        double level = height - below;
        return new Frustum(across(level), bottom, level);
    }

    /** How wide the round room is in which a ball may lie whose middle is so many cm below the rim: a little less than the pot there, since the wall leans. */
    public double room(double ball, double below) {
        double lean = (top - bottom) / 2 / height;
        return across(height - below) - ball * (Math.sqrt(1 + lean * lean) - 1);
    }
}
