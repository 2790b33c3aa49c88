// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.list.Row;

/** What the page says while there is no place. */
final class NoPlaces {
    private static final int INDENT = 8;

    private NoPlaces() {}

    static List<Row> rows() {
        return Stream.of(
                        "",
                        "",
                        "No place yet.",
                        "",
                        "Here each place stands with how warm its thermometer says it is and was,",
                        "and what stands there, so that you see where there is room.",
                        "",
                        "N  makes one: a fridge, a cellar, a sill.",
                        "L  takes it as a line:  place trench, room 12, hazard frost, mice")
                .map(text -> Row.of((area, cells) -> cells.put(area.column() + INDENT, area.row(), text, Style.INK)))
                .toList();
    }
}
