// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.season.PlaceNow;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.PlaceTerms;
import sillbook.words.Terms;

/** The lines of the page of places. */
record PlaceRows(State state) {

    Rows rows() {
        List<PlaceNow> places = state.almanac().places();
        return Rows.of(
                places.isEmpty()
                        ? NoPlaces.rows()
                        : places.stream().map(this::row).toList());
    }

    private Row row(PlaceNow now) {
        return Row.of(new Thing.OfPlace(now.place().id()), new PlaceLine(state, now))
                .foundBy(
                        now.place().name(),
                        PlaceTerms.SORTS.say(now.place().sort()),
                        Terms.STAGES.say(now.place().serves()),
                        now.place().light(),
                        now.place().note());
    }

    static Optional<PlaceNow> find(State state, Id<Place> place) {
        return state.almanac().places().stream()
                .filter(now -> now.place().id().equals(place))
                .findFirst();
    }
}
