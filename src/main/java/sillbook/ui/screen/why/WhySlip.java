// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.season.Why;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Explanation;
import sillbook.words.WhyWords;

/**
 * Why some figures are what they are, one at a time.
 *
 * @param whys the figures of the line it was asked on
 * @param at the one that is explained
 */
public record WhySlip(List<Why<?>> whys, int at) implements Layer {
    public WhySlip {
        whys = List.copyOf(whys);
    }

    /** The offer to explain what is known of a pot. */
    public static Offer offer(State state, Optional<Id<Pot>> pot) {
        List<Why<?>> whys = pot.map(state.almanac().outlook()::whys).orElse(List.of());
        return Offer.of(Action.WHY, () -> Step.to(state.laid(new WhySlip(whys, 0))))
                .offIf(whys.isEmpty(), "there is no figure here");
    }

    @Override
    public Look look(State state, Size body) {
        Explanation explained = new WhyWords(state.journal(), state.kit().handbook()).say(whys.get(at));
        return Explained.look(explained, body)
                .withPlace((at + 1) + " of " + whys.size())
                .withFoot(Action.OTHER_FIGURE, Action.BACK, Action.KEYS);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.byKey(Action.OTHER_FIGURE, key -> other(state, key))
                .offIf(whys.size() < 2, "there is only this figure"));
    }

    private Step other(State state, Key key) {
        int by = key.equals(Keys.LEFT) || key.equals(Keys.UP) ? -1 : 1;
        return Step.to(state.withTop(new WhySlip(whys, Math.floorMod(at + by, whys.size()))));
    }
}
