// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import sillbook.ui.draw.Size;

/** Asks what to do with the layer beneath, in which something is typed that is not kept. */
public record HalfDone() implements Layer {

    @Override
    public Look look(State state, Size body) {
        return Look.foot(Aside.of("Leave it half done? Enter keeps the draft, X drops it, Esc goes on."))
                .withFoot(Action.AGREE, Action.DROP, Action.BACK);
    }

    @Override
    public List<Offer> offers(State state) {
        State asked = state.lifted();
        return List.of(
                Offer.of(Action.AGREE, () -> Step.to(asked.puttingAside())).saying("keep the draft"),
                Offer.of(Action.DROP, () -> Step.to(asked.droppingDraft().lifted())));
    }
}
