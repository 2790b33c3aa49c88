// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.screen.Layer.Cause;
import sillbook.words.Stick;
import sillbook.words.Sticks;

/** What each sort of message makes of a state. */
record Update(State state) implements Message.Cases<Step> {
    /** Keys that leave the sentence in the foot standing. */
    private static final Set<Key> MOVEMENTS =
            Set.of(Keys.UP, Keys.DOWN, Keys.LEFT, Keys.RIGHT, Keys.PAGE_UP, Keys.PAGE_DOWN, Keys.HOME, Keys.END);

    @Override
    public Step pressed(Message.Pressed message) {
        Key key = message.key();
        Update heard = MOVEMENTS.contains(key) ? this : new Update(state.silent());
        if (!state.window().size().holds(Window.SMALLEST)) {
            return heard.inTooSmallAWindow(key);
        }
        return heard.typed(key).orElseGet(() -> heard.command(key));
    }

    /** Where nothing can be seen nothing is typed; one can still leave. */
    private Step inTooSmallAWindow(Key key) {
        boolean leaves = Action.LEAVE.keys().contains(key.anyCase());
        boolean asked = state.top() instanceof Quitting;
        if (leaves && !asked) {
            return state.unkept().isEmpty() ? Step.to(state, new Effect.Quit()) : Step.to(state.laid(new Quitting()));
        }
        return asked ? command(key) : Step.to(state);
    }

    private Optional<Step> typed(Key key) {
        return state.top().type(state, key);
    }

    private Step command(Key key) {
        return Offer.find(state.offers(), key)
                .map(offer -> offer.off()
                        .map(reason -> Step.to(state.saying(Said.problem(offer.refusal(reason)))))
                        .orElseGet(() -> offer.act().apply(key)))
                .orElseGet(() -> Step.to(state));
    }

    @Override
    public Step pasted(Message.Pasted message) {
        return state.top().paste(state, message.text());
    }

    @Override
    public Step resized(Message.Resized message) {
        return Step.to(settled(state.with(message.size()), Cause.RESIZE));
    }

    @Override
    public Step dayBegan(Message.DayBegan message) {
        return Step.to(settled(state.with(state.shown().withToday(message.today())), Cause.ELSEWHERE));
    }

    @Override
    public Step changed(Message.Changed message) {
        State after = settled(state.with(message.now()), Cause.ELSEWHERE);
        return overtaking(after).then(Step.to(after, new Effect.ReadAhead(after.almanac())));
    }

    @Override
    public Step kept(Message.Kept message) {
        int layers = state.layersAfterAnswer().orElse(state.layers().over().size());
        State after = state.droppingDraft().cutTo(layers).answered().with(message.now());
        if (message.wasBack()) {
            return overtaking(settled(after, Cause.BACK).saying(Said.done(message.sentence())));
        }
        Said said = Said.done(message.sentence() + " U takes it back.").under(sticks(after));
        return overtaking(settled(after, Cause.ACT).saying(said));
    }

    /** What to pencil on the stick of what was just potted; of several the first, and how many more. */
    private String sticks(State after) {
        List<Stick> sticks = new Sticks(after.journal(), after.almanac().outlook()).pottedSince(state.journal());
        if (sticks.isEmpty()) {
            return "";
        }
        String more = sticks.size() == 1 ? "" : "; " + (sticks.size() - 1) + " more: sillbook labels";
        return "Stick: " + sticks.get(0).line() + more;
    }

    @Override
    public Step refused(Message.Refused message) {
        return Step.to(state.answered().saying(Said.problem(message.sentence())));
    }

    @Override
    public Step failed(Message.Failed message) {
        return Step.to(state.answered().saying(Said.problem(message.sentence())));
    }

    @Override
    public Step stepsListed(Message.StepsListed message) {
        return Step.to(state.withTop(state.top().listed(state, message)));
    }

    @Override
    public Step tableRead(Message.TableRead message) {
        return state.top().tableRead(state, message);
    }

    @Override
    public Step loggerLookedAt(Message.LoggerLookedAt message) {
        return state.top().loggerLookedAt(state, message);
    }

    @Override
    public Step takingIn(Message.TakingIn message) {
        return Step.to(state.with(state.layers().each(layer -> layer.takingIn(message))));
    }

    /** What told how far it was goes, and the preview is seen again. */
    @Override
    public Step notTakenIn(Message.NotTakenIn message) {
        State after = state.answered();
        State shown = after.top() instanceof Waiting ? after.lifted() : after;
        return Step.to(shown.saying(Said.problem(message.sentence())));
    }

    @Override
    public Step averaged(Message.Averaged message) {
        return Step.to(state.with(state.layers().each(layer -> layer.averaged(message))));
    }

    @Override
    public Step keptRead(Message.KeptRead message) {
        return Step.to(state.with(state.layers().each(layer -> layer.keptRead(message))));
    }

    @Override
    public Step chartRead(Message.ChartRead message) {
        return Step.to(state.with(state.layers().each(layer -> layer.chartRead(message))));
    }

    @Override
    public Step foundSoFar(Message.FoundSoFar message) {
        State after = state.with(state.layers().each(layer -> layer.foundSoFar(message)));
        return Step.to(settled(after, Cause.ELSEWHERE));
    }

    @Override
    public Step sought(Message.Sought message) {
        State after = state.with(state.layers().each(layer -> layer.sought(message)));
        return Step.to(settled(after, Cause.ELSEWHERE));
    }

    @Override
    public Step opened(Message.Opened message) {
        Kit kit = state.kit();
        Layers pages = kit.contents().pages(message.now());
        State opened = State.open(kit, message.copy(), message.now(), state.window(), pages);
        return Step.to(state.top().overOpened(message.now()).map(opened::laid).orElse(opened));
    }

    /** What was asked for about the journal as it was is asked for no longer, where it is another now. */
    private Step overtaking(State after) {
        return state.journal().equals(after.journal())
                ? Step.to(after)
                : new Step(
                        after,
                        state.layers().pages().values().stream()
                                .flatMap(page -> page.overtaken(state, after).stream())
                                .toList());
    }

    private State settled(State after, Cause cause) {
        return after.with(after.layers().each(layer -> layer.settled(state, after, cause)));
    }
}
