// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.help;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Scroll;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.State;

/** How help is drawn: a field to search, under it two columns of keys, or what was found. */
record HelpLook(Help help, State state) {
    private static final int FIELD = 8;
    private static final int FIELD_COLUMNS = 28;
    private static final int HEAD_ROWS = 2;
    private static final int KEYS = 2;
    private static final int SAYS = 11;

    /**
     * One line of a column.
     *
     * @param entry its place among all entries; -1 for a heading or a blank
     */
    private record Line(String heading, Entry shown, int entry) {
        static Line heading(String text) {
            return new Line(text, Entry.NONE, -1);
        }
    }

    Look look() {
        Rect field = new Rect(FIELD, 0, FIELD_COLUMNS, 1);
        return Look.body(this::render)
                .withCursor(new FieldBox(help.typed()).cursor(field))
                .withPlace(place())
                .withAside(aside())
                .withFoot(Action.CHOOSE_ACTION, Action.DO_IT_NOW, Action.BACK);
    }

    private String place() {
        int entries = help.entries(state).size();
        return help.typed().isEmpty() ? state.layers().open().words() : entries + " of " + Action.values().length;
    }

    private void render(Rect area, Cells cells) {
        cells.put(area.column() + 1, area.row(), "Keys", Style.BOLD);
        Rect field = area.line(0).columns(FIELD, FIELD_COLUMNS);
        new FieldBox(help.typed()).render(field, cells);
        String hint = "type to search all " + Action.values().length + " actions";
        cells.put(field.right() + 3, area.row(), hint, Style.PENCIL);
        Rect below = area.withoutTop(HEAD_ROWS);
        if (help.typed().isEmpty()) {
            renderLive(below, cells);
        } else {
            renderFound(below, cells);
        }
    }

    private void renderLive(Rect area, Cells cells) {
        List<Line> left = lines(help.left(state), 0);
        int after = (int) left.stream().filter(line -> line.entry() >= 0).count();
        List<Line> right = lines(help.right(state), after);
        int half = area.columns() / 2 - 2;
        Scroll scroll =
                Scroll.TOP.follow(Math.max(row(left), row(right)), Math.max(left.size(), right.size()), area.rows());
        renderColumn(left, scroll, area.columns(1, half), cells);
        renderColumn(right, scroll, area.withoutLeft(half + 1), cells);
    }

    private int row(List<Line> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (help.chosen() >= 0 && lines.get(i).entry() == help.chosen()) {
                return i;
            }
        }
        return 0;
    }

    private static List<Line> lines(List<Help.Group> groups, int firstEntry) {
        List<Line> lines = new ArrayList<>();
        int entry = firstEntry;
        for (Help.Group group : groups) {
            if (!lines.isEmpty()) {
                lines.add(Line.heading(""));
            }
            lines.add(Line.heading(group.heading()));
            for (Entry shown : group.entries()) {
                lines.add(new Line("", shown, entry));
                entry++;
            }
        }
        return lines;
    }

    private void renderColumn(List<Line> lines, Scroll scroll, Rect area, Cells cells) {
        for (int i = scroll.first(); i < Math.min(lines.size(), scroll.first() + area.rows()); i++) {
            Rect row = area.line(i - scroll.first());
            Line line = lines.get(i);
            cells.put(row.column(), row.row(), line.heading(), Style.BOLD);
            renderEntry(line.shown(), row, cells);
            if (line.entry() >= 0 && line.entry() == help.chosen()) {
                Listing.mark(row, cells);
            }
        }
    }

    private static void renderEntry(Entry entry, Rect row, Cells cells) {
        Style style = entry.isOn() ? Style.INK : Style.PENCIL;
        Style keys = entry.isOn() ? Style.BOLD : Style.PENCIL;
        cells.put(row.column() + KEYS, row.row(), entry.keys(), keys);
        cells.put(row.column() + SAYS, row.row(), Columns.fit(entry.says(), row.columns() - SAYS), style);
    }

    private void renderFound(Rect area, Cells cells) {
        List<Entry> found = help.entries(state);
        if (found.isEmpty()) {
            String none = "No action has '" + help.typed().text().strip() + "'. Backspace shows all again.";
            cells.put(area.column() + KEYS + 1, area.row(), none, Style.INK);
        }
        Scroll scroll = Scroll.TOP.follow(help.chosen(), found.size(), area.rows());
        List<Line> lines = new ArrayList<>();
        found.forEach(entry -> lines.add(new Line("", entry, lines.size())));
        renderColumn(lines, scroll, area.withoutLeft(1), cells);
    }

    /** As many reasons as two lines have room for, and how many more there are. */
    private String off(List<String> reasons) {
        int columns = state.body().columns() - 2;
        return IntStream.iterate(reasons.size(), some -> some > 0, some -> some - 1)
                .mapToObj(some -> "Off just now: " + String.join(", ", reasons.subList(0, some))
                        + (some == reasons.size() ? "." : ", and " + (reasons.size() - some) + " more."))
                .filter(text -> Columns.wrap(text, columns).size() <= 2)
                .findFirst()
                .orElseGet(() -> "Off just now: " + reasons.get(0) + ".");
    }

    private Aside aside() {
        List<Entry> entries = help.entries(state);
        boolean isOne = help.chosen() >= 0 && help.chosen() < entries.size();
        List<Entry> about = isOne ? List.of(entries.get(help.chosen())) : entries;
        List<String> off = about.stream()
                .map(Entry::reasons)
                .filter(Predicate.not(String::isEmpty))
                .toList();
        String all = isOne ? "Enter does it now." : "All of these can be done now.";
        String first = off.isEmpty() ? all : off(off);
        if (Width.of(first) > state.body().columns() - 2) {
            return Aside.of(first);
        }
        return Aside.of("", first, "Letters act in lists. In a field they are text; F1 and F2 work there too.");
    }
}
