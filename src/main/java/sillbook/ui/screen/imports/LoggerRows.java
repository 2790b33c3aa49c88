// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.Counts;
import sillbook.words.logger.Counted;
import sillbook.words.logger.Counted.Strange;
import sillbook.words.logger.CountedWords;
import sillbook.words.logger.Looked;
import sillbook.words.logger.UnderstoodWords;
import sillbook.words.logger.UnderstoodWords.Fact;
import sillbook.words.logger.UnderstoodWords.Topic;

/** The lines of a thermometer's file that is to be imported: what it was understood as, then what it comes to. */
record LoggerRows(State state, Id<Place> place, Looked looked, boolean showsLines) {
    private static final int LABEL = 4;
    private static final int SAYS = 14;
    private static final int COUNT_END = 10;
    private static final int SIGN = 14;
    private static final int COUNTED = 16;
    private static final int NAME = 10;
    private static final int OPEN = 2;
    private static final int BYTES_IN_KB = 1000;
    private static final String NOT_KEPT = "nothing is kept yet";

    /** What each line the cursor can stand on is about. */
    List<Topic> topics() {
        Stream<Topic> counted =
                looked.counted().stream().flatMap(all -> counts(all).stream()).flatMap(line -> line.topic().stream());
        return showsLines
                ? List.of()
                : Stream.concat(facts().stream().map(Fact::topic), counted).toList();
    }

    private List<Fact> facts() {
        return new UnderstoodWords(looked.understood()).facts();
    }

    Rows rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(Row.of(this::heading));
        if (showsLines) {
            looked.counted().ifPresent(counted -> counted.strange().forEach(line -> rows.add(strange(line))));
            return Rows.of(rows);
        }
        rows.add(Row.heading("Understood"));
        facts().forEach(fact -> rows.add(fact(fact)));
        rows.add(Row.of((line, cells) -> text(line, cells, "place", placeName(), Style.INK)));
        looked.counted().ifPresent(counted -> {
            rows.add(Row.heading("Counted"));
            counts(counted).forEach(line -> rows.add(count(line)));
        });
        return Rows.of(rows);
    }

    private String placeName() {
        String name = state.journal().places().find(place).map(Place::name).orElse("");
        return new UnderstoodWords(looked.understood())
                .calledThere()
                .map(called -> name + "; its thermometer is " + called)
                .orElse(name);
    }

    private List<CountedWords.Line> counts(Counted counted) {
        Settings settings = state.journal().settings();
        return new CountedWords(counted, settings.zone(), settings.temperatures()).lines(looked.compared());
    }

    private void heading(Rect line, Cells cells) {
        String size = Counts.grouped(Math.max(1, looked.bytes() / BYTES_IN_KB)) + " kB";
        int room = line.columns() - NAME - Width.of(NOT_KEPT) - 3;
        cells.put(line.column() + 1, line.row(), "Import", Style.BOLD);
        cells.put(line.column() + NAME, line.row(), Columns.fit(looked.name() + ", " + size, room), Style.INK);
        cells.put(line.column() + line.columns() - 1 - Width.of(NOT_KEPT), line.row(), NOT_KEPT, Style.PENCIL);
    }

    private static Row fact(Fact fact) {
        return Row.of(new Thing.Named(fact.topic().word()), (line, cells) -> {
            if (fact.isOpen()) {
                cells.put(line.column() + OPEN, line.row(), Sign.LATE, Style.RUST);
            }
            text(line, cells, fact.topic().word(), fact.says(), Style.INK);
        });
    }

    private static void text(Rect line, Cells cells, String label, String says, Style style) {
        cells.put(line.column() + LABEL, line.row(), label, Style.PENCIL);
        cells.put(line.column() + SAYS, line.row(), Columns.fit(says, line.columns() - SAYS - 1), style);
    }

    private static Row count(CountedWords.Line count) {
        Row row = Row.of((line, cells) -> draw(count, line, cells)).withMark(COUNTED);
        return count.topic()
                .map(topic ->
                        Row.of(new Thing.Named(topic.word()), row.drawing()).withMark(COUNTED))
                .orElse(row);
    }

    private static void draw(CountedWords.Line count, Rect line, Cells cells) {
        String number = Counts.grouped(count.count());
        cells.put(line.column() + COUNT_END - Width.of(number), line.row(), number, Style.INK);
        if (count.wants()) {
            cells.put(line.column() + SIGN, line.row(), Sign.LATE, Style.RUST);
        }
        String says = Columns.fit(count.says(), line.columns() - COUNTED - 1);
        cells.put(line.column() + COUNTED, line.row(), says, Style.INK);
    }

    private static Row strange(Strange strange) {
        Thing thing = new Thing.Named("line " + strange.line());
        return Row.of(thing, (line, cells) -> {
            String number = Integer.toString(strange.line());
            cells.put(line.column() + COUNT_END - Width.of(number), line.row(), number, Style.INK);
            String what = strange.isUnreadable() ? "unreadable  " : "suspicious  ";
            String says = Columns.fit(what + strange.written(), line.columns() - SAYS - 1);
            cells.put(line.column() + SAYS, line.row(), says, Style.INK);
        });
    }
}
