// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Set;
import sillbook.ui.draw.Size;

/** Asks whether the picks are still wanted. */
public record DroppingPicks() implements Layer {

    @Override
    public Look look(State state, Size body) {
        String pots = state.picked().size() == 1 ? "1 pot is" : state.picked().size() + " pots are";
        return Look.foot(Aside.of(pots + " picked. Enter drops the picks, Esc leaves them."))
                .withFoot(Action.AGREE, Action.BACK);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.of(Action.AGREE, () -> Step.to(state.lifted().withPicked(Set.of())))
                .saying("drop the picks"));
    }
}
