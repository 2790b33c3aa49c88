// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.Optional;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Variety;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.bulbs.VarietyCard;
import sillbook.ui.screen.card.PotCard;
import sillbook.ui.screen.places.PlaceCard;
import sillbook.words.DiaryEntry;

/** The card of what an entry is about. */
record Opening(State state) {

    /** A pot's card is open at the entry; empty for what has no card. */
    Optional<Layer> of(DiaryEntry entry) {
        Entity<?> written = entry.written().get(0);
        if (!entry.pots().isEmpty()) {
            return Optional.of(potCard(entry.pots().get(0), entry));
        }
        Optional<Id<Place>> read = ReadPlace.of(written);
        if (read.isPresent()) {
            return read.map(PlaceCard::of);
        }
        if (written instanceof Purchase purchase) {
            return Optional.of(VarietyCard.of(purchase.variety()));
        }
        return written instanceof Event event ? event.subject().fold(new CardOf()) : Optional.empty();
    }

    /** The card of what an event is about; a season has none. */
    private final class CardOf implements Subject.Cases<Optional<Layer>> {
        @Override
        public Optional<Layer> pot(Id<Pot> pot) {
            return Optional.of(PotCard.of(state, pot));
        }

        @Override
        public Optional<Layer> place(Id<Place> place) {
            return Optional.of(PlaceCard.of(place));
        }

        @Override
        public Optional<Layer> variety(Id<Variety> variety) {
            return Optional.of(VarietyCard.of(variety));
        }

        @Override
        public Optional<Layer> purchase(Id<Purchase> purchase) {
            return variety(state.journal().purchases().get(purchase).variety());
        }

        @Override
        public Optional<Layer> season(Season season) {
            return Optional.empty();
        }
    }

    private Layer potCard(Id<Pot> pot, DiaryEntry entry) {
        return entry.written().stream()
                .filter(Event.class::isInstance)
                .map(Event.class::cast)
                .filter(event -> event.subject().asPot().equals(Optional.of(pot)))
                .findFirst()
                .map(event -> PotCard.at(state, pot, event.id()))
                .orElseGet(() -> PotCard.of(state, pot));
    }
}
