// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureName;
import sillbook.model.Container;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Space;
import sillbook.model.Variety;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Form;
import sillbook.ui.screen.form.Sequel;
import sillbook.words.PotNames;

/** The forms, ready to be laid over a page. */
public final class Entry {
    private Entry() {}

    public static Layer newPot() {
        return Form.of(PotSheets.fresh());
    }

    public static Layer sameAgain(Pot model) {
        return Form.of(PotSheets.again(model));
    }

    public static Layer correct(State state, Pot pot) {
        return Form.of(PotSheets.correct(state.journal(), pot));
    }

    public static Layer newVariety() {
        return Form.of(BulbSheets.variety());
    }

    public static Layer correct(State state, Variety variety) {
        return Form.of(BulbSheets.correct(variety, state.journal().settings().lengths()));
    }

    /** Bulbs bought, of this variety if one is named. */
    public static Layer newPurchase(Optional<Variety> of) {
        return Form.of(PurchaseSheets.fresh(of));
    }

    public static Layer correct(State state, Purchase purchase) {
        return Form.of(PurchaseSheets.correct(state.journal(), purchase));
    }

    /** Bulbs ordered have come: how many, in what state. */
    public static Layer arrived(State state, Purchase ordered) {
        return Form.of(PurchaseSheets.arrived(state.journal(), ordered));
    }

    /** How many bulbs of a variety are wanted for the coming season. */
    public static Layer choose(State state, Variety variety) {
        return Form.of(MarkSheets.choose(variety, coming(state)));
    }

    /** Why a variety is not wanted for the coming season. */
    public static Layer setAside(State state, Variety variety) {
        return Form.of(MarkSheets.setAside(variety, coming(state)));
    }

    private static String coming(State state) {
        return state.journal().nameOf(state.journal().chosenFor(state.shown().today()));
    }

    public static Layer newPlace() {
        return Form.of(PlaceSheets.fresh());
    }

    public static Layer correct(State state, Place place) {
        return Form.of(PlaceSheets.correct(
                place, Space.of(place.id(), state.journal()), state.journal().settings()));
    }

    /** How pots stand buried there: written for the first time, or corrected. */
    public static Layer ground(State state, Place place) {
        return Form.of(state.journal()
                .trench(place.id())
                .map(trench -> GroundSheets.correct(state.journal(), place, trench))
                .orElseGet(() -> GroundSheets.fresh(place)));
    }

    public static Layer newPottingMix() {
        return Form.of(StoreSheets.pottingMix());
    }

    public static Layer correct(PottingMix mix) {
        return Form.of(StoreSheets.correct(mix));
    }

    public static Layer newContainer() {
        return Form.of(StoreSheets.container());
    }

    public static Layer correct(State state, Container container) {
        return Form.of(StoreSheets.correct(container, state.journal().settings().lengths()));
    }

    /** A note on some pots, of today. */
    public static Layer jot(State state, Collection<Id<Pot>> pots) {
        return Form.of(SeasonSheets.jot(new PotNames(state.journal()).labels(pots)));
    }

    /** How some pots did, and how their winter ended. */
    public static Layer outcome(Collection<Pot> pots) {
        return outcome(pots, Sequel.NONE);
    }

    /** The same, with something that opens once it is recorded. */
    public static Layer outcome(Collection<Pot> pots, Sequel sequel) {
        return Form.of(OutcomeSheets.fresh(pots).followedBy(sequel));
    }

    public static Layer correct(State state, Outcome outcome) {
        return Form.of(OutcomeSheets.correct(state.journal(), outcome));
    }

    /** What should flower when, by these pots if some are named. */
    public static Layer newWish(Collection<Pot> pots) {
        return Form.of(SeasonSheets.wish(pots));
    }

    /** The same with all that can be asked for: how many, how tall, what colour, at which place. */
    public static Layer newWishInFull() {
        return Form.of(SeasonSheets.wishInFull());
    }

    /**
     * A figure of the grower's own.
     *
     * @param holder a variety's name in quotes, a kind, or {@code all hardy}
     * @param now as it stands now; may be empty
     */
    public static Layer figure(String holder, FigureName figure, String now) {
        return Form.of(SeasonSheets.figure(holder, figure, now));
    }

    public static Layer settings(State state) {
        return Form.of(SeasonSheets.settings(state.journal().settings()));
    }

    /** An entry of the past. */
    public static Layer correct(State state, Event event) {
        return correct(state, List.of(event));
    }

    /**
     * An entry of the past that one act wrote for several pots.
     *
     * @param events at least one; alike but for the pot
     */
    public static Layer correct(State state, List<Event> events) {
        Journal journal = state.journal();
        List<Id<Pot>> pots = events.stream()
                .flatMap(event -> event.subject().asPot().stream())
                .toList();
        String about = pots.isEmpty() ? "the diary" : new PotNames(journal).labels(pots);
        String place = events.get(0).what() instanceof Happening.Moved moved
                ? journal.places().get(moved.place()).name()
                : "";
        return Form.of(new EventSheet(events, about, place));
    }
}
