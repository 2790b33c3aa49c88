// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;

/** The words for places, and for what can go wrong at one. */
public final class PlaceTerms {
    public static final Vocabulary<Sort> SORTS = Vocabulary.<Sort>of("sort of place")
            .with(Sort.FRIDGE, "fridge", "refrigerator")
            .with(Sort.CELLAR, "cellar", "basement")
            .with(Sort.CRAWL_SPACE, "crawl space")
            .with(Sort.COLD_FRAME, "cold frame", "frame")
            .with(Sort.TRENCH, "trench")
            .with(Sort.GARAGE, "garage", "shed")
            .with(Sort.PORCH, "porch")
            .with(Sort.COOL_ROOM, "cool room", "cool")
            .with(Sort.WARM_SILL, "warm sill", "sill", "warm room", "window sill")
            .with(Sort.OTHER, "other");

    public static final Vocabulary<Hazard> HAZARDS = Vocabulary.<Hazard>of("hazard")
            .with(Hazard.FOOD, "food")
            .with(Hazard.FRUIT, "fruit")
            .with(Hazard.FROST, "frost")
            .with(Hazard.MICE, "mice", "mouse")
            .with(Hazard.PETS, "pets", "cats", "dogs")
            .with(Hazard.CHILDREN, "children")
            .with(Hazard.FUMES, "fumes", "exhaust", "heater", "unvented heater")
            .with(Hazard.ROTTING_BULBS, "rotting bulbs", "rot")
            .with(Hazard.COLD_WALL, "cold back wall", "cold wall", "back wall")
            .with(Hazard.DOOR_AJAR, "door ajar", "door")
            .with(Hazard.UNHEATED_ROOM, "unheated room", "unheated garage", "unheated");

    private PlaceTerms() {}
}
