// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.ArrayList;
import java.util.List;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Listing;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.State;

/** How a form is drawn: names and ruled lines, what is understood at their right, suggestions under the one being filled in. */
final class FormLook {
    private static final int FIELD = 13;
    private static final int BODY_INDENT = 2;
    private static final int SLIP_INDENT = 4;

    /** As many as the blanks of a form leave free at their right. */
    private static final int PICTURE_ROWS = 10;

    private final Form form;
    private final State state;
    private final Reading reading;
    private final List<Suggestion> suggestions;
    private final List<Line> lines = new ArrayList<>();
    private int cursorLine;

    FormLook(Form form, State state) {
        this.form = form;
        this.state = state;
        reading = form.sheet().read(state, form.answers());
        suggestions = form.suggestions(state);
        layOut();
    }

    /** One line of the form, drawn into its line of the page. */
    private interface Line {
        void render(Rect line, Cells cells);
    }

    Look look() {
        Sheet sheet = form.sheet();
        Look look =
                sheet.isSlip() ? Look.slip(sheet.title(state), lines.size(), this::render) : Look.body(this::render);
        FieldBox box = new FieldBox(form.field());
        Point caret = box.cursor(new Rect(FIELD, cursorLine, form.blank().columns(), 1));
        return look.withCursor(caret)
                .withPlace(
                        sheet.isSlip()
                                ? ""
                                : "line " + (form.at() + 1) + " of "
                                        + sheet.blanks().size())
                .withAside(sheet.aside(state, form.answers(), form.blank()))
                .withFoot(
                        Action.TAKE_SUGGESTION,
                        Action.CHOOSE_SUGGESTION,
                        Action.NEXT_BLANK,
                        Action.RECORD,
                        Action.BACK,
                        Action.KEYS,
                        Action.WHY);
    }

    private void render(Rect area, Cells cells) {
        for (int i = 0; i < Math.min(lines.size(), area.rows()); i++) {
            lines.get(i).render(area.line(i), cells);
        }
        form.sheet().picture(state, reading).ifPresent(picture -> {
            Rect right =
                    new Rect(area.right() - Sheet.PICTURE_COLUMNS - 1, area.row(), Sheet.PICTURE_COLUMNS, PICTURE_ROWS);
            cells.clear(right.intersect(area));
            picture.render(right, cells.within(right.intersect(area)));
        });
    }

    private void layOut() {
        boolean isSlip = form.sheet().isSlip();
        lines.add(isSlip ? (line, cells) -> {} : this::drawTitle);
        for (int i = 0; i < form.fields().size(); i++) {
            int blank = i;
            boolean isCurrent = i == form.at();
            cursorLine = isCurrent ? lines.size() : cursorLine;
            lines.add((line, cells) -> drawBlank(blank, line, cells));
            if (isCurrent) {
                layOutSuggestions();
            }
        }
        reading.notes().forEach(this::layOut);
        if (isSlip) {
            lines.add((line, cells) -> {});
        }
    }

    private void layOutSuggestions() {
        int widest = suggestions.stream()
                .mapToInt(suggestion -> Width.of(suggestion.shown()))
                .max()
                .orElse(0);
        for (int i = 0; i < suggestions.size(); i++) {
            Suggestion suggestion = suggestions.get(i);
            boolean isChosen = i == form.chosen();
            lines.add((line, cells) -> drawSuggestion(suggestion, widest, isChosen, line, cells));
        }
    }

    /** Where one note has a label, all of them stand beside its column. */
    private boolean isLabelled() {
        return reading.notes().stream().anyMatch(note -> !note.label().isEmpty());
    }

    /** A note takes as many lines as it needs at the width of the smallest page. */
    private void layOut(Note note) {
        int left = form.sheet().isSlip() && !isLabelled() ? SLIP_INDENT : FIELD;
        List<String> wrapped =
                Columns.wrap(note.sentence(), state.window().size().columns() - left - 1);
        for (int i = 0; i < wrapped.size(); i++) {
            String label = i == 0 ? note.label() : "";
            String text = wrapped.get(i);
            lines.add((line, cells) -> {
                cells.put(line.column() + 1, line.row(), label, Style.BOLD);
                cells.put(line.column() + left, line.row(), text, Style.INK);
            });
        }
    }

    private void drawTitle(Rect line, Cells cells) {
        cells.put(line.column() + 1, line.row(), form.sheet().title(state), Style.BOLD);
    }

    private void drawBlank(int index, Rect line, Cells cells) {
        Blank blank = form.sheet().blanks().get(index);
        int indent = form.sheet().isSlip() ? SLIP_INDENT : BODY_INDENT;
        int name = Math.min(indent, FIELD - 1 - Width.of(blank.name()));
        cells.put(line.column() + name, line.row(), blank.name(), Style.INK);
        Rect box = line.columns(FIELD, blank.columns());
        new FieldBox(form.fields().get(index)).render(box, cells);
        reading.remark(blank)
                .ifPresent(remark -> drawRemark(remark, line.withoutLeft(FIELD + blank.columns() + 2), cells));
        if (index == form.at()) {
            cells.put(line.column(), line.row(), Sign.CURSOR, Style.BOLD);
            cells.put(line.column() + name, line.row(), blank.name(), Style.BOLD);
        }
    }

    private static void drawRemark(Remark remark, Rect rest, Cells cells) {
        int column = rest.column();
        if (remark.isProblem()) {
            column = cells.put(column, rest.row(), Sign.LATE, Style.RUST) + 1;
        }
        int room = rest.right() - 1 - column;
        cells.put(column, rest.row(), Columns.fit(remark.brief(), room), remark.isProblem() ? Style.RUST : Style.INK);
    }

    private static void drawSuggestion(Suggestion suggestion, int widest, boolean isChosen, Rect line, Cells cells) {
        Rect from = line.withoutLeft(FIELD);
        int room = Math.max(0, from.columns() - 3);
        String shown = Columns.left(suggestion.shown(), Math.min(widest, room)) + "  " + suggestion.beside();
        cells.put(from.column() + 2, from.row(), Columns.fit(shown, room), Style.INK);
        if (isChosen) {
            Listing.mark(from, cells);
        }
    }
}
