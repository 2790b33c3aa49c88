// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.EnumMap;
import java.util.Map;
import sillbook.model.Trench.Soil;
import sillbook.reckon.soil.Ground;

/**
 * How a soil takes up and leads heat: A. F. Moene and J. C. van Dam, Transport in the Atmosphere-Vegetation-Soil Continuum, 2014, table 2.2; of garden soil, which
 * stands in no table, a judgement of ours between them.
 *
 * @param diffusivity in m2/s
 * @param conductivity in W/m/K
 */
public record SoilHeat(double diffusivity, double conductivity, boolean isPublished) {
    private static final double GARDEN_CONDUCTIVITY = 1;
    private static final Map<Soil, SoilHeat> OF = new EnumMap<>(Map.of(
            Soil.GARDEN_SOIL,
            new SoilHeat(Ground.USUAL_DIFFUSIVITY, GARDEN_CONDUCTIVITY, false),
            Soil.DRY_SAND,
            published(0.19e-6, 0.24),
            Soil.SAND,
            published(0.99e-6, 2.1),
            Soil.WET_SAND,
            published(0.85e-6, 2.5),
            Soil.DRY_CLAY,
            published(0.10e-6, 0.15),
            Soil.CLAY,
            published(0.4e-6, 0.9),
            Soil.WET_CLAY,
            published(0.45e-6, 1.4),
            Soil.DRY_PEAT,
            published(0.16e-6, 0.04),
            Soil.PEAT,
            published(0.13e-6, 0.27),
            Soil.WET_PEAT,
            published(0.12e-6, 0.50)));

    private static SoilHeat published(double diffusivity, double conductivity) {
        return new SoilHeat(diffusivity, conductivity, true);
    }

    public static SoilHeat of(Soil soil) {
        SoilHeat heat = OF.get(soil);
        if (heat == null) {
            throw new IllegalArgumentException("nothing is known of the heat of " + soil);
        }
        return heat;
    }

    Ground ground() {
        return new Ground(diffusivity);
    }
}
