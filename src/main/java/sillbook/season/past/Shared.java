// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Variety;

/** What some pots have in common. */
public sealed interface Shared {

    /** One answer for each case. */
    interface Cases<R> {
        R variety(Id<Variety> variety);

        R purchase(Id<Purchase> purchase);

        R pottingMix(Id<PottingMix> mix);

        R place(Id<Place> place);
    }

    <R> R fold(Cases<R> cases);

    record OfVariety(Id<Variety> variety) implements Shared {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.variety(variety);
        }
    }

    record OfPurchase(Id<Purchase> purchase) implements Shared {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.purchase(purchase);
        }
    }

    record OfPottingMix(Id<PottingMix> mix) implements Shared {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.pottingMix(mix);
        }
    }

    /** The place where they had their cold. */
    record OfPlace(Id<Place> place) implements Shared {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.place(place);
        }
    }
}
