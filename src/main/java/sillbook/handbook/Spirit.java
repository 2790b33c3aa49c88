// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.List;

/**
 * Alcohol in the water against tall paperwhites: 4 to 6 % keeps leaves and stalks a third to a half shorter, a tenth harms. One part of
 * spirit of 40 % to seven of water makes 5 % (Cornell University, as the Mercury News of 13 December 2012 tells it).
 */
public final class Spirit {
    /** Percent of alcohol in the water. */
    public static final int LEAST = 4;

    public static final int USUAL = 5;
    public static final int MOST = 6;
    public static final int HARMS = 10;

    /** Shoots have so many cm when it is begun. */
    public static final double SHOOT_LEAST = 3;

    public static final double SHOOT_MOST = 5;

    public static final List<String> SOURCES = List.of("cornell-alcohol");

    private Spirit() {}

    /**
     * Parts of water to one part of spirit, for the usual strength of the mixture.
     *
     * @param percent of alcohol in the spirit
     * @throws IllegalArgumentException when it is weaker than the mixture, or more than all
     */
    public static double partsOfWater(double percent) {
        if (!(percent > USUAL && percent <= 100)) {
            throw new IllegalArgumentException("no strength of a spirit: " + percent);
        }
        return percent / USUAL - 1;
    }
}
