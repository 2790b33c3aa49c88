// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.stream.Stream;

/** What an event is about. */
public sealed interface Subject {

    /** One answer for each sort of subject. */
    interface Cases<R> {
        R pot(Id<Pot> pot);

        R place(Id<Place> place);

        R variety(Id<Variety> variety);

        R purchase(Id<Purchase> purchase);

        R season(Season season);
    }

    <R> R fold(Cases<R> cases);

    /** The entry it names, unless it is a season. */
    default Stream<Id<?>> refersTo() {
        return Stream.empty();
    }

    /** A pot. */
    record OfPot(Id<Pot> pot) implements Subject {
        // Most events are about pots, and are sorted by them at every start; see Id.

        @Override
        public boolean equals(Object other) {
            return other instanceof OfPot that && pot.equals(that.pot);
        }

        @Override
        public int hashCode() {
            return pot.hashCode();
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.pot(pot);
        }

        @Override
        public Stream<Id<?>> refersTo() {
            return Stream.of(pot);
        }
    }

    /** A place. */
    record OfPlace(Id<Place> place) implements Subject {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.place(place);
        }

        @Override
        public Stream<Id<?>> refersTo() {
            return Stream.of(place);
        }
    }

    /** A variety. */
    record OfVariety(Id<Variety> variety) implements Subject {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.variety(variety);
        }

        @Override
        public Stream<Id<?>> refersTo() {
            return Stream.of(variety);
        }
    }

    /** A purchase. */
    record OfPurchase(Id<Purchase> purchase) implements Subject {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.purchase(purchase);
        }

        @Override
        public Stream<Id<?>> refersTo() {
            return Stream.of(purchase);
        }
    }

    /** A whole season. */
    record OfSeason(Season season) implements Subject {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.season(season);
        }
    }

    /** The pot, when it is about one. */
    default Optional<Id<Pot>> asPot() {
        return this instanceof OfPot of ? Optional.of(of.pot()) : Optional.empty();
    }
}
