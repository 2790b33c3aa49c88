// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Space;
import sillbook.model.Stage;
import sillbook.reckon.shelf.Shelf;

/**
 * A place as a plan sees it.
 *
 * @param room how many pots find room: as it is written, else as many as are known to stand on its shelf; empty when neither is known
 */
public record Berth(Place place, Optional<Space> space, Optional<Integer> room) {
    /** Places that serve a stage, in the order of the journal, for pots so wide across the rim, in cm. */
    static List<Berth> serving(Stage stage, double rim, Journal journal) {
        return journal.places().all().stream()
                .filter(place -> place.serves() == stage)
                .map(place -> of(place, rim, journal))
                .toList();
    }

    static Berth of(Place place, double rim, Journal journal) {
        Optional<Space> space = Space.of(place.id(), journal);
        Optional<Integer> onShelf = space.flatMap(Space::shelf).map(surface -> standing(surface, rim));
        return new Berth(place, space, place.room().or(() -> onShelf));
    }

    /** As many as a shelf is known to hold; what is hundreds of times as wide as a pot is no shelf but a floor. */
    private static int standing(Space.Surface surface, double rim) {
        double width = Math.min(surface.width().centimetres(), Shelf.WIDEST * rim);
        double depth = Math.min(surface.depth().centimetres(), Shelf.WIDEST * rim);
        return new Shelf(width, depth).most(rim).count();
    }

    public Id<Place> id() {
        return place.id();
    }

    /** Whether the place is there on a day. */
    public boolean isThere(LocalDate day) {
        return space.filter(known -> !known.there().contains(day)).isEmpty();
    }

    /** Whether a pot that stands there on a day has cold. */
    public boolean isCold(LocalDate day) {
        return isThere(day) && place.coldDays().contains(day);
    }
}
