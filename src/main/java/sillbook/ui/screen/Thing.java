// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.Collections;
import java.util.List;
import sillbook.model.Event;
import sillbook.model.Id;
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

        @Override
        public boolean touches(Thing other) {
            return other instanceof OfPots some && !Collections.disjoint(pots, some.pots);
        }
    }

    /** A place; its pots are meant with it. */
    record OfPlace(Id<Place> place) implements Thing {}

    record OfVariety(Id<Variety> variety) implements Thing {}

    record OfPurchase(Id<Purchase> purchase) implements Thing {}

    /** An entry of the diary. */
    record OfEvent(Id<Event> event) implements Thing {}

    /** Something that is on one page only, told apart by a word. */
    record Named(String word) implements Thing {}

    static Thing of(Id<Pot> pot) {
        return new OfPots(List.of(pot));
    }

    /** Whether the two are about the same, in part. */
    default boolean touches(Thing other) {
        return equals(other);
    }
}
