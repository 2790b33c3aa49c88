// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Entity;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.act.RemoveEntry;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.imports.ListFileSlip;
import sillbook.ui.screen.mark.MarkOffers;

/**
 * What can be done with a variety, or with what belongs to it.
 *
 * @param thing what the cursor stands on
 * @param variety the one it is about
 * @param correction the form that corrects what the cursor stands on
 */
record BulbOffers(State state, Optional<Thing> thing, Optional<Variety> variety, Optional<Layer> correction) {
    /** Here their keys mean something else. */
    private static final Set<Action> NOT_HERE =
            Set.of(Action.NEW_POT, Action.CHECK, Action.CORRECT, Action.REMOVE, Action.WHY);

    List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        offers.addAll(new MarkOffers(state, variety).offers());
        offers.add(lay(Action.NEW_VARIETY, Entry.newVariety()));
        offers.add(lay(Action.NEW_PURCHASE, Entry.newPurchase(variety)));
        offers.add(lay(Action.IMPORT_LIST, ListFileSlip.EMPTY));
        offers.add(Offer.of(
                        Action.CORRECT,
                        () -> Step.to(correction.map(state::laid).orElse(state)))
                .offIf(correction.isEmpty(), "there is nothing here yet")
                .offIf(readOnly()));
        offers.add(RemoveEntry.offer(state, entity()));
        new Acts(state, thing)
                .offers().stream()
                        .filter(offer -> !NOT_HERE.contains(offer.action()))
                        .forEach(offers::add);
        return offers;
    }

    /** Of bulbs still on their way: that they have come. */
    static Optional<Offer> arrived(State state, Purchase purchase) {
        return Optional.of(purchase)
                .filter(bought -> bought.state() == Purchase.State.ORDERED || bought.state() == Purchase.State.TO_ORDER)
                .map(ordered -> Offer.of(Action.ARRIVED, () -> Step.to(state.laid(Entry.arrived(state, ordered))))
                        .offIf(state.copy().isReadOnly(), "the journal is read only"));
    }

    private Optional<? extends Entity<?>> entity() {
        return thing.orElse(null) instanceof Thing.OfPurchase of
                ? state.journal().purchases().find(of.purchase())
                : variety;
    }

    private Offer lay(Action action, Layer layer) {
        return Offer.of(action, () -> Step.to(state.laid(layer))).offIf(readOnly());
    }

    private Optional<String> readOnly() {
        return state.copy().isReadOnly() ? Optional.of("the journal is read only") : Optional.empty();
    }
}
