// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.season.Why;
import sillbook.season.WhyLearnt;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.WhyWords;

/**
 * Why some figures are what they are, one at a time.
 *
 * @param pot whose figures they are; empty of a place
 * @param whys the figures of the line it was asked on
 * @param at the one that is explained
 */
public record WhySlip(Optional<Id<Pot>> pot, List<Why<?>> whys, int at) implements Layer {
    private static final String NOTHING_RECKONED = "nothing of it is reckoned";

    public WhySlip {
        whys = List.copyOf(whys);
    }

    /** The offer to explain what is reckoned of a place. */
    public static Offer ofPlace(State state, Optional<Place> place) {
        List<Why<?>> whys = place.map(state.almanac()::whys).orElse(List.of());
        return Offer.of(Action.WHY, () -> Step.to(state.laid(new WhySlip(Optional.empty(), whys, 0))))
                .offIf(whys.isEmpty(), NOTHING_RECKONED);
    }

    /** The offer to explain what is known of a pot. */
    public static Offer offer(State state, Optional<Id<Pot>> pot) {
        List<Why<?>> whys = pot.map(state.almanac().outlook()::whys).orElse(List.of());
        return Offer.of(Action.WHY, () -> Step.to(state.laid(new WhySlip(pot, whys, 0))))
                .offIf(whys.isEmpty(), "there is no figure here");
    }

    @Override
    public Look look(State state, Size body) {
        Why<?> why = whys.get(at);
        Look look = Explained.look(new WhyWords(state.journal(), state.kit().handbook()).say(why), body)
                .withPlace((at + 1) + " of " + whys.size());
        return why instanceof WhyLearnt
                ? look.withFoot(Action.HANDBOOKS, Action.OTHER_FIGURE, Action.BACK, Action.KEYS)
                : look.withFoot(Action.OTHER_FIGURE, Action.BACK, Action.KEYS);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(
                Offer.byKey(Action.OTHER_FIGURE, key -> other(state, key))
                        .offIf(whys.size() < 2, "there is only this figure"),
                WhoseFigure.offer(state, whys.get(at)));
    }

    private Step other(State state, Key key) {
        int by = key.equals(Keys.LEFT) || key.equals(Keys.UP) ? -1 : 1;
        return Step.to(state.withTop(new WhySlip(pot, whys, Math.floorMod(at + by, whys.size()))));
    }

    /** The figures as they are now; of a pot that is gone, as they were. */
    @Override
    public Layer settled(State before, State after, Cause cause) {
        List<Why<?>> now = pot.filter(after.journal().pots()::contains)
                .map(after.almanac().outlook()::whys)
                .filter(all -> !all.isEmpty())
                .orElse(whys);
        return new WhySlip(pot, now, Math.min(at, now.size() - 1));
    }
}
