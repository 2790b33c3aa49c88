// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

/** The trade's shapes of pots, by how high they are for their width. Makers differ, and volumes published for one size differ twofold: a pot that matters is measured. */
public enum PotShape {
    /** As high as wide (common practice). */
    STANDARD(1),
    /** Three quarters (common practice). */
    AZALEA(0.75),
    /** A bulb pan, 6.62 by 4.25 inches in a gardener's list of clay pots. */
    PAN(4.25 / 6.62);

    /** A base seven tenths of the rim; a judgement of ours. */
    public static final double BASE = 0.7;

    private final double high;

    PotShape(double high) {
        this.high = high;
    }

    /**
     * Of a width inside the rim, in cm.
     *
     * @param rim above 0
     */
    public Frustum of(double rim) {
        return new Frustum(rim, BASE * rim, high * rim);
    }
}
