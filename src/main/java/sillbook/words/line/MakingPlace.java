// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.model.Place;
import sillbook.words.Heard;
import sillbook.words.PlaceTerms;

/** {@code hall cupboard (cool room)}. */
final class MakingPlace implements NamingSense.Making<Place> {
    @Override
    public String noun() {
        return "place";
    }

    @Override
    public Heard<Place> make(String name, String sort, Bench bench) {
        return PlaceTerms.SORTS.parse(sort).map(known -> Place.of(bench.ids().next(), name, known));
    }

    @Override
    public boolean is(Place place, Place described) {
        return true;
    }

    @Override
    public String example() {
        return "cool room";
    }

    @Override
    public List<Sense.Offer> offers(String beginning, Bench bench) {
        return Senses.oneOf(PlaceTerms.SORTS).offers(beginning, bench);
    }
}
