// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import sillbook.model.Trench.Cover;
import sillbook.reckon.soil.Mulch;

/**
 * How well a cover leads heat. Of fresh snow it is published (Moene and van Dam, table 2.2); of straw, leaves and bark as they lie moist in winter it is a judgement
 * of ours, on the side of leading more.
 *
 * @param conductivity in W/m/K
 */
public record CoverHeat(double conductivity, Basis basis) {
    private static final double FRESH_SNOW = 0.1;
    private static final double LOOSE_AND_MOIST = 0.1;
    private static final double BARK = 0.15;
    private static final double CM = 100;

    /** What the figure rests on. */
    public enum Basis {
        PUBLISHED,
        ASSUMED,
        OWN
    }

    public static CoverHeat of(Cover cover) {
        return cover.conductivity()
                .map(given -> new CoverHeat(given, Basis.OWN))
                .orElseGet(() -> usual(cover.material()));
    }

    private static CoverHeat usual(Cover.Material material) {
        return switch (material) {
            case SNOW -> new CoverHeat(FRESH_SNOW, Basis.PUBLISHED);
            case STRAW, LEAVES -> new CoverHeat(LOOSE_AND_MOIST, Basis.ASSUMED);
            case BARK -> new CoverHeat(BARK, Basis.ASSUMED);
        };
    }

    static Mulch mulch(Cover cover) {
        return new Mulch(cover.thickness().centimetres() / CM, of(cover).conductivity());
    }
}
