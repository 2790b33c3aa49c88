// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.steps;

import java.util.List;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Scroll;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.TakenStep;

/**
 * The steps that can be taken back or put back, the next one first.
 *
 * @param steps as far as they are listed yet
 * @param last the last step meant; all before it go with it
 */
public record StepsSlip(Way way, List<TakenStep> steps, int last) implements Layer {
    /** Of the page, that stay in sight above. */
    private static final int PAGE_ROWS = 10;

    /** The title's rule and the blank line under it. */
    private static final int HEAD_ROWS = 2;

    public StepsSlip {
        steps = List.copyOf(steps);
    }

    /** Lays the slip over the page and asks for the names of the steps. */
    public static Step open(State state, Way way) {
        return Step.to(state.laid(new StepsSlip(way, List.of(), 0)), way.list(state.shown()));
    }

    /** The offer that opens it, from anywhere. */
    public static Offer offer(State state, Way way) {
        return Offer.of(way.other().turn(), () -> open(state, way))
                .offIf(
                        way.count(state.shown()) == 0,
                        way == Way.BACK ? "nothing is done yet" : "nothing was taken back")
                .offIf(state.copy().isReadOnly(), "the journal is read only");
    }

    @Override
    public Layer listed(State state, Message.StepsListed message) {
        return new StepsSlip(way, way.nextFirst(message.steps()), 0);
    }

    @Override
    public Look look(State state, Size body) {
        int rows = Math.min(steps.size(), Math.max(1, body.rows() - PAGE_ROWS - HEAD_ROWS));
        Scroll scroll = Scroll.TOP.follow(last, steps.size(), rows);
        StepLine line = new StepLine(steps, last, state.shown().today());
        Listing listing = new Listing(steps.size(), last, scroll, line);
        return Look.slip(way.title(), rows + 1, (area, cells) -> listing.render(area.withoutTop(1), cells))
                .withCursor(new Point(StepLine.TIME, 1 + last - scroll.first()))
                .withPlace((last + 1) + " of " + way.count(state.shown()))
                .withAside(aside(state))
                .withFoot(Action.AGREE, Action.HOW_FAR, way.turn(), Action.BACK, Action.KEYS);
    }

    private Aside aside(State state) {
        String meant = last == 0 ? "this line" : "this line and all above it";
        String first = "Enter " + way.doesIt() + " " + meant + ": now " + (last + 1) + " of " + way.count(state.shown())
                + " steps.";
        String then = way == Way.BACK
                ? "Nothing is lost: R puts back, also after a restart, until a new change."
                : "A new change ends this: what was taken back before it stays so.";
        return Aside.of("", first, then);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(
                Offer.of(Action.AGREE, () -> go(state)).saying(way.does() + " " + (last + 1)),
                Offer.byKey(Action.HOW_FAR, key -> Step.to(state.withTop(moved(key)))),
                offer(state.lifted(), way.other()));
    }

    private StepsSlip moved(Key key) {
        int to = last + (key.equals(Keys.UP) ? -1 : 1);
        return new StepsSlip(way, steps, Math.max(0, Math.min(steps.size() - 1, to)));
    }

    /** Who types ahead of the names of the steps means the last one. */
    private Step go(State state) {
        Effect effect = way.go(last + 1);
        return Step.asking(state, effect, state.layers().over().size() - 1);
    }
}
