// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Field;
import sillbook.ui.draw.FieldBox;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Layer.Reach;

/**
 * Finding on a page: a field over its list, which then shows only what has the words in it.
 *
 * @param sought what is looked for, as far as it is typed; empty where the field is not open
 * @param isTyping whether keys go to the field
 */
public record Find(Optional<Field> sought, boolean isTyping) {
    public static final Find CLOSED = new Find(Optional.empty(), false);

    private static final int FIELD = 8;
    private static final int FIELD_COLUMNS = 37;
    private static final int COUNT = FIELD + FIELD_COLUMNS + 3;

    public boolean isOpen() {
        return sought.isPresent();
    }

    /** The field open and typed in, with what stood in it last. */
    Find typing() {
        return new Find(Optional.of(sought.orElse(Field.EMPTY)), true);
    }

    /** The keys go to the list again, which stays as it was found. */
    Find listed() {
        return new Find(sought, false);
    }

    /** After a key that is text here; empty when it is none. */
    Optional<Find> press(Key key) {
        return sought.filter(field -> isTyping)
                .flatMap(field -> field.press(key))
                .map(Find::of);
    }

    Optional<Find> insert(String text) {
        return sought.filter(field -> isTyping).map(field -> of(field.insert(text)));
    }

    private static Find of(Field field) {
        return new Find(Optional.of(field), true);
    }

    /** As typed, blanks around it left out; may be empty. */
    public String words() {
        return sought.map(Field::text).map(String::strip).orElse("");
    }

    /** How many lines over the list it takes. */
    public int headRows() {
        return isOpen() ? 1 : 0;
    }

    public Reach reach() {
        return isTyping ? Reach.FIELD : Reach.PAGE;
    }

    /** Of these lines those that are found. */
    public Rows in(Rows all) {
        if (words().isEmpty()) {
            return all;
        }
        Words wanted = Words.of(words());
        Rows found = all.only(row -> wanted.areIn(row.foundBy()));
        return found.things().isEmpty() ? Rows.of(none()) : found;
    }

    private List<Row> none() {
        String says = "No line here has '" + words() + "'. Esc shows all.";
        Row row = Row.of((area, cells) -> cells.put(area.column() + FIELD, area.row(), says, Style.INK));
        return List.of(Row.BLANK, Row.BLANK, row);
    }

    /** {@code 3 of 27 lines}. */
    public String count(Rows found, Rows all) {
        int lines = all.things().size();
        return found.things().size() + " of " + lines + (lines == 1 ? " line" : " lines");
    }

    /**
     * Draws the field into the line, where it is open.
     *
     * @param found how much is found
     */
    public void render(Rect line, String found, Cells cells) {
        sought.ifPresent(field -> {
            cells.put(line.column() + 1, line.row(), "Find", Style.BOLD);
            new FieldBox(field).render(line.columns(FIELD, FIELD_COLUMNS), cells);
            cells.put(line.column() + COUNT, line.row(), found, Style.INK);
        });
    }

    /** Where the terminal's cursor stands while the field is typed in. */
    public Optional<Point> cursor() {
        Rect box = new Rect(FIELD, 0, FIELD_COLUMNS, 1);
        return sought.filter(field -> isTyping).map(field -> new FieldBox(field).cursor(box));
    }
}
