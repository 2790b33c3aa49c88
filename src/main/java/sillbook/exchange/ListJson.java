// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.words.list.BadCell;
import sillbook.words.list.ListReading;
import sillbook.words.list.ListedRow;

/** What {@code sillbook import} answers, as JSON. */
public final class ListJson {
    private ListJson() {}

    /**
     * The document: every row, and what became of the whole.
     *
     * @param step the name of the step it made; empty where nothing is kept
     */
    public static String write(ListReading reading, Optional<String> step) {
        return Answer.write(new Fields()
                .text("of", reading.sort().word())
                .flag("kept", step.isPresent())
                .text("step", step)
                .list("rows", reading.rows(), ListJson::row)
                .texts("leftOut", reading.leftOut()));
    }

    private static Fields row(ListedRow row) {
        return new Fields()
                .number("row", row.number())
                .written("name", row.name())
                .code("outcome", row.outcome())
                .texts("says", row.says())
                .list("wrong", row.bad(), ListJson::bad);
    }

    private static Fields bad(BadCell cell) {
        return new Fields()
                .text("column", cell.column())
                .written("found", cell.found())
                .text("says", cell.sentence());
    }
}
