// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.season.PlaceNow;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.act.RemoveEntry;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.imports.LoggerFileSlip;
import sillbook.ui.screen.line.LineSlip;
import sillbook.ui.screen.why.WhySlip;

/** What can be done with the place under the cursor, if it is on one. */
record PlaceOffers(State state, Optional<PlaceNow> now) {

    List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        offers.add(newPlace());
        now.map(this::takeReading).ifPresent(offers::add);
        now.map(this::importReadings).ifPresent(offers::add);
        offers.add(WhySlip.ofPlace(state, now.map(PlaceNow::place)));
        boolean isOfPlace = state.picked().isEmpty();
        if (isOfPlace) {
            offers.add(RemoveEntry.offer(state, now.map(PlaceNow::place)));
        }
        new Acts(state, now.map(there -> new Thing.OfPlace(there.place().id())))
                .offers().stream()
                        .filter(offer -> offer.action() != Action.NEW_POT && offer.action() != Action.WHY)
                        .filter(offer -> offer.action() != Action.REMOVE || !isOfPlace)
                        .map(this::ofRound)
                        .forEach(offers::add);
        return offers;
    }

    private Offer newPlace() {
        return Offer.of(Action.NEW_PLACE, () -> Step.to(state.laid(Entry.newPlace())))
                .offIf(state.copy().isReadOnly(), "the journal is read only");
    }

    private Offer takeReading(PlaceNow there) {
        LineSlip line = LineSlip.ofReading(there.place().name());
        return Offer.of(Action.TAKE_READING, () -> Step.to(state.laid(line)))
                .offIf(state.copy().isReadOnly(), "the journal is read only");
    }

    private Offer importReadings(PlaceNow there) {
        return Offer.of(Action.IMPORT_READINGS, () -> Step.to(state.laid(LoggerFileSlip.of(there.place()))))
                .offIf(state.copy().isReadOnly(), "the journal is read only");
    }

    /** A place where nothing stands has no round to make or to put off. */
    private Offer ofRound(Offer offer) {
        boolean isOfPlace = now.isPresent() && state.picked().isEmpty();
        if (offer.action() == Action.CHECK && isOfPlace) {
            return offer.saying("round").offIf(now.orElseThrow().pots().isEmpty(), "nothing stands here");
        }
        if (offer.action() == Action.ANOTHER_DAY) {
            return offer.offIf(now.flatMap(PlaceNow::round).isEmpty(), "no round is asked for here");
        }
        return offer;
    }
}
