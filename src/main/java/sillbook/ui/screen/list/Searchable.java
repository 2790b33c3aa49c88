// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Key;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** A page in whose list one can find: the same keys on every page. */
public interface Searchable extends Layer {

    Find find();

    /** The page as that is looked for, its cursor on the first line. */
    Layer finding(Find other);

    /** The page with all its lines again. */
    default Layer showingAll() {
        return finding(Find.CLOSED);
    }

    @Override
    default Reach reach() {
        return find().reach();
    }

    @Override
    default Optional<Step> type(State state, Key key) {
        return find().press(key).map(typed -> Step.to(state.withTop(finding(typed))));
    }

    @Override
    default Step paste(State state, String text) {
        return find().insert(text)
                .map(typed -> Step.to(state.withTop(finding(typed))))
                .orElseGet(() -> Step.to(state));
    }

    /** The keys of finding: they open the field, leave it for what was found, and show all again. */
    default List<Offer> findOffers(State state) {
        Offer open = Offer.of(Action.FIND, () -> Step.to(state.withTop(finding(find().typing()))));
        Offer list = Offer.of(Action.LIST_FOUND, () -> Step.to(state.withTop(finding(find().listed()))));
        Offer all = Offer.of(Action.BACK, () -> Step.to(state.withTop(finding(Find.CLOSED))))
                .saying("all");
        if (!find().isOpen()) {
            return List.of(open);
        }
        return List.of(all, find().isTyping() ? list : open);
    }
}
