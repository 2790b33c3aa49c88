// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.go;

import java.util.List;
import java.util.Optional;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Scroll;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/**
 * Asks where to go; what the letters typed so far could mean stands under them.
 *
 * @param chosen the goal under the cursor
 */
public record GoSlip(Field typed, int chosen) implements Layer {
    public static final GoSlip EMPTY = new GoSlip(Field.EMPTY, 0);

    private static final int FIELD = 4;
    private static final int FIELD_COLUMNS = 30;
    private static final int GOALS = 2;
    private static final int MOST_GOALS = 8;
    private static final int ROWS = GOALS + MOST_GOALS + 1;
    private static final int APART = 3;

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    private List<Goal> goals(State state) {
        return new Goals(state).beginning(typed.text());
    }

    @Override
    public Look look(State state, Size body) {
        List<Goal> goals = goals(state);
        Rect box = new Rect(FIELD, 1, FIELD_COLUMNS, 1);
        return Look.slip("Go to", ROWS, (area, cells) -> render(goals, area, cells))
                .withCursor(new FieldBox(typed).cursor(box))
                .withPlace(goals.isEmpty() ? "" : (chosen + 1) + " of " + goals.size())
                .withAside(aside(goals))
                .withFoot(Action.AGREE, Action.TAKE_SUGGESTION, Action.CHOOSE_SUGGESTION, Action.BACK, Action.KEYS);
    }

    private void render(List<Goal> goals, Rect area, Cells cells) {
        new FieldBox(typed).render(area.line(1).columns(FIELD, FIELD_COLUMNS), cells);
        int widest =
                goals.stream().mapToInt(goal -> Width.of(goal.name())).max().orElse(0);
        Scroll scroll = Scroll.TOP.follow(chosen, goals.size(), MOST_GOALS);
        Rect list = area.lines(GOALS, MOST_GOALS).withoutLeft(FIELD - 2);
        new Listing(goals.size(), chosen, scroll, (index, line, within) -> {
                    Goal goal = goals.get(index);
                    int room = line.columns() - 3;
                    int beside = Math.min(widest + APART, room);
                    within.put(line.column() + 2, line.row(), Columns.fit(goal.name(), room), Style.INK);
                    String says = Columns.fit(goal.beside(), room - beside);
                    within.put(line.column() + 2 + beside, line.row(), says, Style.PENCIL);
                })
                .render(list, cells);
    }

    private Aside aside(List<Goal> goals) {
        String sought = typed.text().strip();
        if (!goals.isEmpty() || sought.isEmpty()) {
            return Aside.of(
                    "",
                    "A label, a variety, a place, or a day of the diary: T4, inkw, cellar, 2 jan.",
                    "Any beginning of a word will do; accents and capitals do not matter.");
        }
        return Aside.of("No label, variety, place or day begins with '" + sought + "'.");
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        if (key.equals(Keys.UP) || key.equals(Keys.DOWN)) {
            return Optional.empty();
        }
        return typed.press(key).map(field -> Step.to(state.withTop(new GoSlip(field, 0))));
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(state.withTop(new GoSlip(typed.insert(text), 0)));
    }

    @Override
    public List<Offer> offers(State state) {
        List<Goal> goals = goals(state);
        String none = typed.isEmpty() ? "nothing is named yet" : "there is no such name";
        return List.of(
                Offer.of(Action.AGREE, () -> go(state, goals)).saying("go").offIf(goals.isEmpty(), none),
                Offer.of(Action.TAKE_SUGGESTION, () -> take(state, goals)).offIf(goals.isEmpty(), none),
                Offer.byKey(Action.CHOOSE_SUGGESTION, key -> choose(state, goals, key))
                        .offIf(goals.isEmpty(), none));
    }

    private Step go(State state, List<Goal> goals) {
        return Step.to(goals.get(chosen).opens().apply(state.lifted()));
    }

    /** The name as it is written, to be looked at or typed on. */
    private Step take(State state, List<Goal> goals) {
        return Step.to(state.withTop(new GoSlip(Field.of(goals.get(chosen).name()), 0)));
    }

    private Step choose(State state, List<Goal> goals, Key key) {
        int to = chosen + (key.equals(Keys.DOWN) ? 1 : -1);
        return Step.to(state.withTop(new GoSlip(typed, Math.max(0, Math.min(goals.size() - 1, to)))));
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        int last = Math.max(0, goals(after).size() - 1);
        return new GoSlip(typed, Math.min(chosen, last));
    }
}
