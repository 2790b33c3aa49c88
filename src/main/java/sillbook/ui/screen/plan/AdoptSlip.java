// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import sillbook.plan.PlanNow;
import sillbook.ui.draw.Sentences;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Kinds;
import sillbook.words.plan.AdoptWords;
import sillbook.words.plan.Adopting;

/** Asks whether the season is to go by a plan, and says what that does. */
record AdoptSlip(PlanNow now) implements Layer {
    @Override
    public Look look(State state, Size body) {
        Sentences told = Sentences.of(new AdoptWords(state.journal(), now).lines(), body.columns());
        return Look.slip("Adopt plan " + now.plan().name(), told.rows(), told)
                .withAside(Aside.of("", "One step; U takes it back.", ""))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    @Override
    public List<Offer> offers(State state) {
        Kinds kinds = new Kinds(state.journal(), state.kit().handbook());
        int layersAfter = state.layers().over().size() - 1;
        return List.of(Offer.of(Action.AGREE, () -> Step.keep(state, Adopting.of(now, kinds), layersAfter))
                .saying("adopt it"));
    }
}
