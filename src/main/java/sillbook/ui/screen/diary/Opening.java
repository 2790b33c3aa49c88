// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.Optional;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.SpanReading;
import sillbook.model.Subject;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.State;
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
        if (written instanceof SpanReading span) {
            return Optional.of(PlaceCard.of(span.place()));
        }
        return written instanceof Event event && event.subject() instanceof Subject.OfPlace of
                ? Optional.of(PlaceCard.of(of.place()))
                : Optional.empty();
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
