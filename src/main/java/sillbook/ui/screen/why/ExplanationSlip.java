// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import java.util.List;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.words.Explanation;

/** Why one figure is what it is. */
public record ExplanationSlip(Explanation explained) implements Layer {
    @Override
    public Look look(State state, Size body) {
        return Explained.look(explained, body).withFoot(Action.BACK, Action.KEYS);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of();
    }
}
