// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Season;
import sillbook.ui.draw.Key;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.DroppingPicks;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.HalfDone;
import sillbook.ui.screen.Layer.Reach;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.PageName;
import sillbook.ui.screen.Quitting;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Timescale;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.go.GoSlip;
import sillbook.ui.screen.help.Help;
import sillbook.ui.screen.line.LineSlip;
import sillbook.ui.screen.steps.StepsSlip;
import sillbook.ui.screen.steps.Way;

/** The keys that mean the same on every page, and the few of them that also work over one. */
record Everywhere(State state) {

    List<Offer> offers() {
        List<Offer> offers = new ArrayList<>();
        if (state.top().reach() == Reach.PAGE) {
            offers.addAll(onPages());
            offers.addAll(writing());
        }
        offers.addAll(overPages());
        return offers;
    }

    private List<Offer> onPages() {
        return List.of(
                Offer.byKey(Action.OPEN_PAGE, this::openPage),
                todayOnRuler(),
                Offer.of(
                        Action.SEASON_BEFORE,
                        () -> season(state.timescale().season().previous())),
                Offer.of(
                        Action.SEASON_AFTER,
                        () -> season(state.timescale().season().next())),
                Offer.of(Action.GO_TO, () -> Step.to(state.laid(GoSlip.EMPTY))));
    }

    private Offer todayOnRuler() {
        Timescale today = state.timescale().at(state.shown().season());
        return Offer.of(Action.TODAY_ON_RULER, () -> Step.to(state.with(today)))
                .offIf(state.timescale().equals(today), "today is on the ruler");
    }

    private List<Offer> writing() {
        String readOnly = "the journal is read only";
        boolean isReadOnly = state.copy().isReadOnly();
        return List.of(
                Offer.of(Action.WRITE_LINE, () -> Step.to(state.laid(LineSlip.EMPTY)))
                        .offIf(isReadOnly, readOnly),
                StepsSlip.offer(state, Way.BACK),
                StepsSlip.offer(state, Way.FORWARD),
                Offer.of(Action.SETTINGS, () -> Step.to(state.laid(Entry.settings(state))))
                        .offIf(isReadOnly, readOnly),
                Offer.of(Action.NEW_WISH, () -> Step.to(state.laid(Entry.newWish(List.of()))))
                        .offIf(isReadOnly, readOnly));
    }

    private List<Offer> overPages() {
        return List.of(
                Offer.of(Action.BACK, this::back).offIf(backIsOff()),
                Offer.of(Action.LEAVE, () -> Step.to(state.laid(new Quitting())))
                        .offIf(state.top() instanceof Quitting, "Enter leaves, Esc stays"),
                Offer.of(Action.KEYS, () -> Step.to(state.laid(Help.OPEN)))
                        .offIf(state.top() instanceof Help, "here they are"),
                Offer.of(Action.REDRAW, () -> Step.to(state, new Effect.Redraw())),
                Offer.of(Action.SUSPEND, () -> Step.to(state, new Effect.Suspend())));
    }

    private Step openPage(Key key) {
        Optional<PageName> page = key instanceof Key.Typed typed ? PageName.of(typed.codePoint()) : Optional.empty();
        return Step.to(page.filter(state.layers().pages()::containsKey)
                .map(state::opening)
                .orElse(state));
    }

    private Step season(Season season) {
        return Step.to(state.with(state.timescale().at(season)));
    }

    private Optional<String> backIsOff() {
        boolean bare = state.layers().over().isEmpty() && state.picked().isEmpty();
        return bare ? Optional.of("this is the page itself, Q leaves the book") : Optional.empty();
    }

    private Step back() {
        if (state.top().isHalfDone()) {
            return Step.to(state.laid(new HalfDone()));
        }
        return Step.to(state.layers().over().isEmpty() ? state.laid(new DroppingPicks()) : state.lifted());
    }
}
