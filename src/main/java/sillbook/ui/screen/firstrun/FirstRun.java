// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import java.util.List;
import java.util.Optional;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.Form;

/**
 * The first picture of all: what the book is, and three ways into it.
 *
 * @param usualFile where a journal of one's own will lie, as the grower would write it
 * @param chosen the way under the cursor
 */
public record FirstRun(String usualFile, Way chosen) implements Layer {
    static final List<Way> WAYS = List.of(Way.values());

    /** As it opens. */
    public static FirstRun of(String usualFile) {
        return new FirstRun(usualFile, Way.BEGIN);
    }

    /** A book of one's own asks a few things first. */
    @Override
    public Optional<Layer> overOpened(Snapshot opened) {
        return chosen == Way.BEGIN
                ? Optional.of(Form.of(new BeginSheet(opened.journal().settings())))
                : Optional.empty();
    }

    @Override
    public Look look(State state, Size body) {
        return Look.body(new FirstRunPage(this, state))
                .covering(Look.Cover.EVERYTHING)
                .withCursor(new Point(FirstRunPage.WAYS, FirstRunPage.FIRST_WAY + WAYS.indexOf(chosen)))
                .withAside(Aside.of("", "Which reads best?  1 dark background  2 light background  3 no colours", ""))
                .withFoot(Action.CHOOSE, Action.START, Action.KEYS, Action.LEAVE);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(
                Offer.byKey(Action.CHOOSE, key -> Step.to(state.withTop(new FirstRun(usualFile, after(key))))),
                Offer.of(Action.START, () -> start(state)),
                Offer.byKey(Action.COLOURS, key -> Step.to(coloured(state, key))));
    }

    private Way after(Key key) {
        boolean up = key.equals(Keys.UP) || key.equals(Keys.PAGE_UP) || key.equals(Keys.HOME);
        boolean one = key.equals(Keys.UP) || key.equals(Keys.DOWN);
        int by = one ? 1 : WAYS.size();
        int to = WAYS.indexOf(chosen) + (up ? -by : by);
        return WAYS.get(Math.max(0, Math.min(WAYS.size() - 1, to)));
    }

    private Step start(State state) {
        Colours colours = state.journal().settings().colours();
        return switch (chosen) {
            case BEGIN -> Step.to(state, new Effect.BeginJournal(colours));
            case DEMO -> Step.to(state, new Effect.SeeDemo(colours));
            case OPEN -> Step.to(state.laid(FileSlip.EMPTY));
        };
    }

    /** Seen at once, kept with the journal that is begun. */
    private static State coloured(State state, Key key) {
        Colours colours =
                key.equals(Key.of('1')) ? Colours.DARK : key.equals(Key.of('2')) ? Colours.LIGHT : Colours.NONE;
        Settings old = state.journal().settings();
        Settings settings = new Settings(
                old.zone(), old.seasonStart(), old.temperatures(), old.lengths(), colours, old.dailyCare());
        return state.with(state.shown().withSettings(settings));
    }
}
