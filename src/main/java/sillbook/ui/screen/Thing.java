// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Variety;

/** What a cursor stands on: what keys act on, and what the cursor keeps to when the journal changes elsewhere. */
public sealed interface Thing {

    /** A pot, or several that share a line. */
    record OfPots(List<Id<Pot>> pots) implements Thing {
        public OfPots {
            pots = List.copyOf(pots);
        }

        public Id<Pot> first() {
            return pots.get(0);
        }

        @Override
        public boolean touches(Thing other) {
            return other instanceof OfPots some && !Collections.disjoint(pots, some.pots);
        }
    }

    /** A place; its pots are meant with it. */
    record OfPlace(Id<Place> place) implements Thing {}

    /** A job of the ground of a place. */
    record OfGround(Id<Place> place, JobKind job) implements Thing {}

    record OfVariety(Id<Variety> variety) implements Thing {}

    record OfPurchase(Id<Purchase> purchase) implements Thing {}

    /** An entry of the diary. */
    record OfEvent(Id<Event> event) implements Thing {}

    /** A thermometer's file that was taken in, or what was told of files like it. */
    record OfFile(Id<?> entry) implements Thing {}

    /** How a pot did, as it was written. */
    record OfOutcome(Id<Outcome> outcome) implements Thing {}

    /** Something that is on one page only, told apart by a word. */
    record Named(String word) implements Thing {}

    static Thing of(Id<Pot> pot) {
        return new OfPots(List.of(pot));
    }

    /** The pots, when it is some. */
    default Optional<OfPots> asPots() {
        return this instanceof OfPots of ? Optional.of(of) : Optional.empty();
    }

    /** The place, when it is one. */
    default Optional<Id<Place>> asPlace() {
        return this instanceof OfPlace of ? Optional.of(of.place()) : Optional.empty();
    }

    /** The variety, when it is one. */
    default Optional<Id<Variety>> asVariety() {
        return this instanceof OfVariety of ? Optional.of(of.variety()) : Optional.empty();
    }

    /** The purchase, when it is one. */
    default Optional<Id<Purchase>> asPurchase() {
        return this instanceof OfPurchase of ? Optional.of(of.purchase()) : Optional.empty();
    }

    /** The entry of the diary, when it is one. */
    default Optional<Id<Event>> asEvent() {
        return this instanceof OfEvent of ? Optional.of(of.event()) : Optional.empty();
    }

    /** How a pot did, when it is that. */
    default Optional<Id<Outcome>> asOutcome() {
        return this instanceof OfOutcome of ? Optional.of(of.outcome()) : Optional.empty();
    }

    /** Whether the two are about the same, in part. */
    default boolean touches(Thing other) {
        return equals(other);
    }
}
