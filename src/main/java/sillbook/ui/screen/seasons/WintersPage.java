// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.season.past.Summary;
import sillbook.season.past.Tally;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.SummaryWords;
import sillbook.words.TallyWords;

/** The winters one under the other, each with what it came to. */
record WintersPage(Cursor cursor) implements Layer {
    static final WintersPage OPEN = new WintersPage(Cursor.FIRST);

    private static final int INDENT = 8;

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private FindPane list(State state) {
        SummaryWords words = new SummaryWords(state.journal());
        List<Row> rows = state.almanac().summaries().stream()
                .map(one -> Row.of(thing(one), new WinterLine(one, words.winter(one))))
                .toList();
        return new FindPane(
                Find.CLOSED, Rows.of(rows.isEmpty() ? List.of(nothing()) : rows), cursor, heads(state, rows.size()));
    }

    private static List<Widget> heads(State state, int winters) {
        Tally all = state.almanac().winters().tally();
        return List.of(
                (line, cells) -> {
                    int after = cells.put(line.column() + 1, line.row(), "Season by season", Style.BOLD);
                    cells.put(after + 2, line.row(), TallyWords.sum(winters, all), Style.INK);
                },
                WinterLine::heading);
    }

    private static Row nothing() {
        return Row.of(
                (area, cells) -> cells.put(area.column() + INDENT, area.row(), "Nothing was grown yet.", Style.INK));
    }

    private static Thing thing(Summary summary) {
        return new Thing.Named(summary.winter().toString());
    }

    private Optional<Summary> under(State state) {
        return cursor.thing(list(state).rows())
                .flatMap(thing -> state.almanac().summaries().stream()
                        .filter(one -> thing(one).equals(thing))
                        .findFirst());
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Look look = Look.body(list)
                .withPlace("oldest first, " + list.place(body.rows()))
                .withAside(under(state).map(one -> aside(state, one)).orElse(Aside.NONE))
                .withFoot(Action.OPEN_WINTER, Action.WRITE_LINE, Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private static Aside aside(State state, Summary summary) {
        SummaryWords words = new SummaryWords(state.journal());
        return Aside.of(words.winter(summary), String.join("; ", words.facts(summary)) + ".");
    }

    @Override
    public List<Offer> offers(State state) {
        Optional<Summary> under = under(state);
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state,
                key -> new WintersPage(list(state).pressed(key, state.body().rows()))));
        offers.add(Offer.of(
                        Action.OPEN_WINTER,
                        () -> Step.to(under.map(one -> state.laid(WinterCard.of(one.winter())))
                                .orElse(state)))
                .offIf(under.isEmpty(), "nothing was grown yet"));
        offers.addAll(new Acts(state, Optional.empty()).offers());
        return offers;
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return new WintersPage(
                list(after).settled(list(before), cause, after.body().rows()));
    }
}
