// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.list.Row;

/** What the page says where it has no entry to show. */
final class NoEntries {
    private static final int INDENT = 8;

    private NoEntries() {}

    static List<Row> rows(Choice choice) {
        return Stream.of("", "", sentence(choice)).map(NoEntries::row).toList();
    }

    private static String sentence(Choice choice) {
        String sought = choice.find().words();
        if (!sought.isEmpty()) {
            return "No entry has '" + sought + "'. Esc shows all.";
        }
        return choice.sort() == EntrySort.ALL
                ? "Nothing written yet. J jots a note."
                : "No " + choice.sort().words() + " written yet. Esc shows all.";
    }

    private static Row row(String text) {
        return Row.of((area, cells) -> cells.put(area.column() + INDENT, area.row(), text, Style.INK));
    }
}
