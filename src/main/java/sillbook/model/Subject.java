// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;

/** What an event is about. */
public sealed interface Subject {
    /** A pot. */
    record OfPot(Id<Pot> pot) implements Subject {}

    /** A place. */
    record OfPlace(Id<Place> place) implements Subject {}

    /** A variety. */
    record OfVariety(Id<Variety> variety) implements Subject {}

    /** A purchase. */
    record OfPurchase(Id<Purchase> purchase) implements Subject {}

    /** A whole season. */
    record OfSeason(Season season) implements Subject {}

    /** The pot, when it is about one. */
    default Optional<Id<Pot>> asPot() {
        return this instanceof OfPot of ? Optional.of(of.pot()) : Optional.empty();
    }
}
