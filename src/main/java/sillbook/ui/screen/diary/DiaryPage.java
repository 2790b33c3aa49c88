// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.Key;
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
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.words.DiaryEntry;

/**
 * Every entry of every season, the newest day first, and a field to find some of them.
 *
 * @param isTyping whether keys go to the field
 */
public record DiaryPage(Cursor cursor, Choice choice, boolean isTyping) implements Layer {
    public static final DiaryPage OPEN = new DiaryPage(Cursor.FIRST, Choice.ALL, false);

    @Override
    public Reach reach() {
        return isTyping ? Reach.FIELD : Reach.PAGE;
    }

    /** All entries, the cursor on the first of that day, or on the last one before it. */
    public static DiaryPage on(State state, LocalDate day) {
        List<DiaryEntry> entries = Choice.ALL.entries(state);
        int later = (int) entries.stream()
                .takeWhile(entry -> entry.day().likely().isAfter(day))
                .count();
        int height = OPEN.listRows(state.body());
        return OPEN.at(Cursor.FIRST.to(later, OPEN.lines(state).rows(), height));
    }

    DiaryPage showing(Choice other) {
        return new DiaryPage(Cursor.FIRST, other, isTyping);
    }

    private DiaryPage typing(Field field) {
        return new DiaryPage(Cursor.FIRST, choice.seeking(field), true);
    }

    private DiaryPage at(Cursor to) {
        return new DiaryPage(to, choice, isTyping);
    }

    private DiaryRows lines(State state) {
        return new DiaryRows(state, choice);
    }

    private int headRows() {
        return choice.sought().isPresent() ? 2 : 1;
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
        List<DiaryEntry> entries = choice.entries(state);
        Rows rows = lines(state).rows();
        ListPane pane = new ListPane(rows, cursor);
        Optional<FindLine> find = choice.sought().map(field -> FindLine.of(state, field, entries));
        Look look = Look.body((area, cells) -> render(find, rows, area, cells))
                .withPlace("newest first, " + pane.place(listRows(body)))
                .withAside(aside(state, under(cursor, entries)))
                .withFoot(
                        isTyping ? Action.LIST_FOUND : Action.OPEN_ENTRY,
                        Action.FIND,
                        Action.CORRECT,
                        Action.JOT,
                        Action.VIEW,
                        Action.BACK);
        return point(find, pane, body).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state, Optional<DiaryEntry> entry) {
        return entry.map(one -> new EntryAside(state).of(one, lines(state).isWhole(one)))
                .orElse(Aside.NONE);
    }

    private Optional<Point> point(Optional<FindLine> find, ListPane pane, Size body) {
        return isTyping
                ? find.map(line -> line.cursor(body.columns()))
                : pane.point(listRows(body)).map(at -> new Point(at.column(), at.row() + headRows()));
    }

    private void render(Optional<FindLine> find, Rows rows, Rect area, Cells cells) {
        find.ifPresent(line -> line.render(area.line(0), cells));
        if (!rows.things().isEmpty()) {
            DiaryLine.heading(area.line(headRows() - 1), cells);
        }
        Rect list = area.withoutTop(headRows());
        new ListPane(rows, cursor).render(list, cells);
        if (find.isPresent()) {
            FindLine.hint(list.withoutTop(rows.scrolled().size()), cells);
        }
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return isTyping
                ? choice.sought().flatMap(field -> field.press(key)).map(field -> Step.to(state.withTop(typing(field))))
                : Optional.empty();
    }

    @Override
    public Step paste(State state, String text) {
        return Step.to(choice.sought()
                .filter(field -> isTyping)
                .map(field -> state.withTop(typing(field.insert(text))))
                .orElse(state));
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.byKey(
                Action.MOVE_CURSOR,
                key -> Step.to(state.withTop(at(cursor.pressed(key, lines(state).rows(), listRows(state.body())))))));
        if (!choice.isAll()) {
            offers.add(Offer.of(Action.BACK, () -> Step.to(state.withTop(OPEN))).saying("all"));
        }
        if (isTyping) {
            offers.add(Offer.of(Action.LIST_FOUND, () -> Step.to(state.withTop(new DiaryPage(cursor, choice, false)))));
            return offers;
        }
        offers.add(Offer.of(
                Action.FIND, () -> Step.to(state.withTop(typing(choice.sought().orElse(Field.EMPTY))))));
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.laid(new SortChoice(this)))));
        offers.addAll(new EntryOffers(state, under(cursor, choice.entries(state))).offers());
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
