// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Purchase;
import sillbook.model.Subject;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.entry.Entry;
import sillbook.words.DiaryEntry;

/** What can be done with the entry under the cursor, if it is on one: what it is about can be opened and acted on. */
record EntryOffers(State state, Optional<DiaryEntry> entry) {

    List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        offers.add(open());
        offers.add(correct());
        new Acts(state, about())
                .offers().stream()
                        .filter(offer -> offer.action() != Action.CORRECT && offer.action() != Action.REMOVE)
                        .forEach(offers::add);
        return offers;
    }

    private Offer open() {
        Optional<Layer> card = entry.flatMap(new Opening(state)::of);
        return lay(Action.OPEN_ENTRY, card)
                .offIf(entry.isEmpty(), "there is no entry here")
                .offIf(card.isEmpty(), "it is about the whole season");
    }

    private Offer correct() {
        Optional<Layer> form = entry.flatMap(this::correction);
        return lay(Action.CORRECT, form)
                .offIf(state.copy().isReadOnly(), "the journal is read only")
                .offIf(entry.isEmpty(), "there is no entry here")
                .offIf(form.isEmpty(), "a reading is written anew, U takes it back");
    }

    private Offer lay(Action action, Optional<Layer> layer) {
        return Offer.of(action, () -> Step.to(layer.map(state::laid).orElse(state)));
    }

    private Optional<Layer> correction(DiaryEntry one) {
        Entity<?> written = one.written().get(0);
        if (written instanceof Event) {
            List<Event> events = one.written().stream().map(Event.class::cast).toList();
            return Optional.of(Entry.correct(state, events));
        }
        if (written instanceof Outcome outcome) {
            return Optional.of(Entry.correct(state, outcome));
        }
        return written instanceof Purchase purchase ? Optional.of(Entry.correct(state, purchase)) : Optional.empty();
    }

    /** What a note on the entry would be about. */
    private Optional<Thing> about() {
        return entry.flatMap(one -> one.pots().isEmpty()
                ? one.written().stream().flatMap(EntryOffers::other).findFirst()
                : Optional.of(new Thing.OfPots(one.pots())));
    }

    private static Stream<Thing> other(Entity<?> written) {
        if (written instanceof Purchase purchase) {
            return Stream.of(new Thing.OfPurchase(purchase.id()));
        }
        Optional<Id<Place>> read = ReadPlace.of(written);
        if (read.isPresent()) {
            return Stream.of(new Thing.OfPlace(read.get()));
        }
        if (!(written instanceof Event event)) {
            return Stream.empty();
        }
        if (event.subject() instanceof Subject.OfVariety of) {
            return Stream.of(new Thing.OfVariety(of.variety()));
        }
        return event.subject() instanceof Subject.OfPlace of
                ? Stream.of(new Thing.OfPlace(of.place()))
                : Stream.empty();
    }
}
