// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Trench.Cover.Material;
import sillbook.model.Trench.Soil;

/** The words for soils and for what is laid on them. */
public final class GroundTerms {
    public static final Vocabulary<Soil> SOILS = Vocabulary.<Soil>of("soil")
            .with(Soil.GARDEN_SOIL, "garden soil", "loam", "soil")
            .with(Soil.DRY_SAND, "dry sand")
            .with(Soil.SAND, "sand", "sandy soil")
            .with(Soil.WET_SAND, "wet sand")
            .with(Soil.DRY_CLAY, "dry clay")
            .with(Soil.CLAY, "clay", "clay soil")
            .with(Soil.WET_CLAY, "wet clay")
            .with(Soil.DRY_PEAT, "dry peat")
            .with(Soil.PEAT, "peat")
            .with(Soil.WET_PEAT, "wet peat");

    public static final Vocabulary<Material> COVERS = Vocabulary.<Material>of("cover")
            .with(Material.STRAW, "straw", "hay")
            .with(Material.LEAVES, "leaves", "leaf mulch")
            .with(Material.BARK, "bark", "bark mulch", "wood chips")
            .with(Material.SNOW, "snow");

    private GroundTerms() {}
}
