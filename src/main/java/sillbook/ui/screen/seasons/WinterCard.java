// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Season;
import sillbook.season.past.Summary;
import sillbook.text.Columns;
import sillbook.text.Initial;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.SummaryWords;

/** One winter, a fact a line. */
record WinterCard(Season winter) implements Layer {

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private Optional<Summary> summary(State state) {
        return state.almanac().summaries().stream()
                .filter(one -> one.winter().equals(winter))
                .findFirst();
    }

    @Override
    public Look look(State state, Size body) {
        SummaryWords words = new SummaryWords(state.journal());
        List<Row> rows = new ArrayList<>();
        summary(state).ifPresent(one -> {
            rows.add(Row.heading("Winter " + words.winter(one)));
            words.facts(one).forEach(fact -> lines(fact, body).forEach(rows::add));
        });
        return Look.body(new ListPane(Rows.of(rows), Cursor.FIRST)).withFoot(Action.WRITE_LINE, Action.BACK);
    }

    private static List<Row> lines(String fact, Size body) {
        return Columns.wrap(Initial.large(fact) + ".", Math.max(1, body.columns() - Row.LABEL - 1)).stream()
                .map(text -> Row.of((area, cells) -> cells.put(area.column() + Row.LABEL, area.row(), text, Style.INK)))
                .toList();
    }

    @Override
    public List<Offer> offers(State state) {
        return new Acts(state, Optional.empty()).offers();
    }
}
