// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.list.Searchable;
import sillbook.words.DiaryEntry;

/** Every entry of every season, the newest day first, and a field to find some of them. */
public record DiaryPage(Cursor cursor, Choice choice) implements Searchable {
    public static final DiaryPage OPEN = new DiaryPage(Cursor.FIRST, Choice.ALL);

    @Override
    public Find find() {
        return choice.find();
    }

    @Override
    public Layer finding(Find other) {
        return showing(choice.finding(other));
    }

    @Override
    public Layer showingAll() {
        return OPEN;
    }

    /** All entries, the cursor on the first of that day, or on the last one before it. */
    public static DiaryPage on(State state, LocalDate day) {
        DiaryRows all = OPEN.lines(state);
        int later = (int) all.entries().stream()
                .takeWhile(entry -> entry.day().likely().isAfter(day))
                .count();
        int height = OPEN.listRows(state.body());
        return OPEN.at(Cursor.FIRST.to(later, all.rows(), height));
    }

    DiaryPage showing(Choice other) {
        return new DiaryPage(Cursor.FIRST, other);
    }

    private DiaryPage at(Cursor to) {
        return new DiaryPage(to, choice);
    }

    private DiaryRows lines(State state) {
        return DiaryRows.of(state, choice);
    }

    private int headRows() {
        return find().headRows() + 1;
    }

    private int listRows(Size body) {
        return body.rows() - headRows();
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(lines(state).rows());
    }

    private static Optional<DiaryEntry> under(Cursor cursor, List<DiaryEntry> entries) {
        return cursor.at() < entries.size() ? Optional.of(entries.get(cursor.at())) : Optional.empty();
    }

    @Override
    public Look look(State state, Size body) {
        DiaryRows lines = lines(state);
        Rows rows = lines.rows();
        ListPane pane = new ListPane(rows, cursor);
        Look look = Look.body((area, cells) -> render(FindWords.found(state, lines.entries()), rows, area, cells))
                .withPlace("newest first, " + pane.place(listRows(body)))
                .withAside(aside(state, lines))
                .withFoot(
                        find().isTyping() ? Action.LIST_FOUND : Action.OPEN_ENTRY,
                        Action.FIND,
                        Action.CORRECT,
                        Action.JOT,
                        Action.VIEW,
                        Action.BACK);
        return point(pane, body).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state, DiaryRows lines) {
        return under(cursor, lines.entries())
                .map(one -> new EntryAside(state).of(one, lines.isWhole(one)))
                .orElse(Aside.NONE);
    }

    private Optional<Point> point(ListPane pane, Size body) {
        return find().cursor()
                .or(() -> pane.point(listRows(body)).map(at -> new Point(at.column(), at.row() + headRows())));
    }

    private void render(String found, Rows rows, Rect area, Cells cells) {
        find().render(area.line(0), found, cells);
        if (!rows.things().isEmpty()) {
            DiaryLine.heading(area.line(headRows() - 1), cells);
        }
        Rect list = area.withoutTop(headRows());
        new ListPane(rows, cursor).render(list, cells);
        if (find().isOpen()) {
            FindWords.hint(list.withoutTop(rows.scrolled().size()), cells);
        }
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state, key -> at(cursor.pressed(key, lines(state).rows(), listRows(state.body())))));
        offers.addAll(findOffers(state));
        if (find().isTyping()) {
            return offers;
        }
        if (!find().isOpen() && !choice.isAll()) {
            offers.add(Offer.of(Action.BACK, () -> Step.to(state.withTop(OPEN))).saying("all"));
        }
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.laid(new SortChoice(this)))));
        offers.addAll(new EntryOffers(state, under(cursor, lines(state).entries())).offers());
        return offers;
    }

    /** At its top it stays there, and the diary need not be read for it. */
    @Override
    public Layer settled(State before, State after, Cause cause) {
        if (cursor.at() == 0) {
            return this;
        }
        return at(cursor.settled(lines(before).rows(), lines(after).rows(), cause, listRows(after.body())));
    }
}
