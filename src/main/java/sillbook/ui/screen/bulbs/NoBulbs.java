// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.list.Row;

/** What the page says while there is nothing to list. */
final class NoBulbs {
    private static final int INDENT = 8;

    private NoBulbs() {}

    static List<Row> varieties() {
        return rows(
                "No variety yet.",
                "",
                "Here each variety stands with its kind, what is in hand, and how it did,",
                "winter by winter.",
                "",
                "N  writes the first; T  takes in bulbs bought; I  imports a list.",
                "L  takes it as a line:  variety Marrow Lane, tulip triumph, 45 cm");
    }

    static List<Row> purchases() {
        return rows("No purchase yet. T takes in the first.");
    }

    private static List<Row> rows(String... lines) {
        return Stream.concat(Stream.of("", ""), Stream.of(lines))
                .map(text -> Row.of((area, cells) -> cells.put(area.column() + INDENT, area.row(), text, Style.INK)))
                .toList();
    }
}
