// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;

/** The keys of a page with lines under the ruler. */
public record RulerKeys(State state) {

    public List<Offer> offers() {
        return List.of(Offer.byKey(Action.PAN, this::pan), Offer.of(Action.ZOOM, this::zoom));
    }

    private Step pan(Key key) {
        Timescale timescale = state.timescale();
        return Step.to(state.with(key.equals(Keys.LEFT) ? timescale.earlier() : timescale.later()));
    }

    private Step zoom() {
        Timescale timescale = state.timescale();
        int shown = timescale.ruler(state, state.body().columns()).cellsAWeek();
        return Step.to(state.with(timescale.zoomed(shown)));
    }
}
