// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/**
 * How a pot was filled at the bench, beside its container and its potting mix.
 *
 * @param usualWay the grower's usual way it was filled by, as that was called then; empty when by none
 * @param topping what lies on the potting mix, in the grower's words; may be empty
 */
public record Potting(String usualWay, Holes holes, Depth depth, String topping) {

    /** Nothing is known of it. */
    public static final Potting NOT_SAID = new Potting("", Holes.NOT_SAID, Depth.NOT_SAID, "");

    /** What lies over the holes, so that water leaves and the potting mix stays. */
    public enum Holes {
        NOT_SAID,
        PAPER,
        MESH,
        CROCKS,
        OPEN
    }

    /** How deep the bulbs sit. */
    public enum Depth {
        NOT_SAID,
        HALF_OUT,
        THIRD_OUT,
        TIPS_OUT,
        TIPS_LEVEL,
        JUST_COVERED,
        COVERED
    }
}
