// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.change.Change;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.imports.PreviewRows.Line;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.words.Counts;
import sillbook.words.Heard;
import sillbook.words.line.Bench;
import sillbook.words.list.ListReading;
import sillbook.words.list.ListSort;
import sillbook.words.list.Outcome;
import sillbook.words.list.Table;

/**
 * What each row of a list comes to.
 *
 * @param file its name, without its folder
 * @param table what stands in it
 * @param reading the same, understood against the journal as it is shown
 */
record ListPreview(String file, Table table, ListReading reading, Cursor cursor) implements Layer {

    /** Opened on the first row that is wrong, where one is. */
    static Heard<ListPreview> of(State state, String file, Table table) {
        return read(state, table).map(reading -> new ListPreview(file, table, reading, Cursor.FIRST).onWrong(state));
    }

    private static Heard<ListReading> read(State state, Table table) {
        Bench bench = new Bench(
                state.journal(),
                state.almanac().outlook(),
                state.kit().handbook(),
                state.kit().ids());
        return ListReading.read(table, ListSort.meant(table), bench);
    }

    private ListPreview onWrong(State state) {
        List<Line> lines = preview().lines();
        int wrong = IntStream.range(0, lines.size())
                .filter(line -> lines.get(line).outcome() == Outcome.WRONG)
                .findFirst()
                .orElse(0);
        return at(cursor.to(wrong, rows(), state.body().rows()));
    }

    private ListPreview at(Cursor to) {
        return new ListPreview(file, table, reading, to);
    }

    private Rows rows() {
        return preview().rows();
    }

    private PreviewRows preview() {
        return new PreviewRows(file, reading);
    }

    @Override
    public Look look(State state, Size body) {
        ListPane pane = new ListPane(rows(), cursor);
        Look look = Look.body(pane)
                .withPlace(reading.counts() + ", " + pane.place(body.rows()))
                .withAside(aside())
                .withFoot(Action.AGREE, Action.CHOOSE, Action.BACK, Action.KEYS);
        return pane.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private Aside aside() {
        Line line = preview().lines().get(cursor.at());
        return Aside.of(Integer.toString(line.row()), line.outcome().word() + ": " + line.says());
    }

    @Override
    public List<Offer> offers(State state) {
        Optional<Change> change = reading.change();
        return List.of(
                Offer.of(
                                Action.AGREE,
                                () -> change.map(one -> Step.keep(state, one, 0))
                                        .orElse(Step.to(state)))
                        .saying("import")
                        .offIf(hindrance()),
                Offer.byKey(Action.CHOOSE, key -> moved(state, key)));
    }

    private Optional<String> hindrance() {
        long wrong = reading.count(Outcome.WRONG);
        if (wrong > 0) {
            return Optional.of(Counts.of(wrong, "row") + (wrong == 1 ? " is wrong" : " are wrong")
                    + "; Esc, mend the file, Enter");
        }
        return reading.change().isPresent() ? Optional.empty() : Optional.of("all of it is in the book already");
    }

    private Step moved(State state, Key key) {
        return Step.to(state.withTop(at(cursor.pressed(key, rows(), state.body().rows()))));
    }

    /** In a journal that changed meanwhile its rows may come to something else. */
    @Override
    public Layer settled(State before, State after, Cause cause) {
        return read(after, table)
                .map(again -> new ListPreview(file, table, again, cursor).inSight(after))
                .value()
                .orElse(this);
    }

    private ListPreview inSight(State state) {
        return at(cursor.to(cursor.at(), rows(), state.body().rows()));
    }
}
