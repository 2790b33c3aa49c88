// SPDX-License-Identifier: Apache-2.0
package sillbook.manual;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The parts of a page that begin after a remark of their own, {@code <!-- words: by a test -->}, and end with a fence or a table. */
final class Blocks {
    private static final String FENCE = "```";

    private Blocks() {}

    /** The lines between the fences that follow this remark. */
    static List<String> fenced(Page page, String remark) {
        int first = start(page, remark) + 1;
        List<String> rest = page.lines().subList(first, page.lines().size());
        return rest.subList(0, rest.indexOf(FENCE));
    }

    /** The page with other lines between those fences. */
    static List<String> refenced(Page page, String remark, List<String> anew) {
        int first = start(page, remark) + 1;
        return replaced(page, first, first + fenced(page, remark).size(), anew);
    }

    /** The rows of the table that follows this remark, cell by cell, without the heading. */
    static List<List<String>> table(Page page, String remark) {
        return tableLines(page, remark).stream().skip(2).map(Blocks::cells).toList();
    }

    /** The page with another table after that remark. */
    static List<String> retabled(Page page, String remark, List<String> anew) {
        int first = start(page, remark);
        return replaced(page, first, first + tableLines(page, remark).size(), anew);
    }

    /** The two lines a table begins with. */
    static List<String> heading(Page page, String remark) {
        return tableLines(page, remark).subList(0, 2);
    }

    private static List<String> tableLines(Page page, String remark) {
        return page.lines().stream()
                .skip(start(page, remark))
                .takeWhile(line -> line.startsWith("|"))
                .toList();
    }

    private static List<String> cells(String row) {
        String inner = row.substring(1, row.length() - 1);
        return List.of(inner.split("(?<!\\\\)\\|", -1)).stream()
                .map(String::strip)
                .toList();
    }

    /** The number of the line after the remark, and after the blank one that may follow. */
    private static int start(Page page, String remark) {
        int at = page.lines().indexOf("<!-- " + remark + " -->");
        if (at < 0) {
            throw new AssertionError(page + " has no remark '" + remark + "'");
        }
        return page.lines().get(at + 1).isEmpty() ? at + 2 : at + 1;
    }

    private static List<String> replaced(Page page, int from, int to, List<String> anew) {
        List<String> lines = new ArrayList<>(page.lines().subList(0, from));
        lines.addAll(anew);
        lines.addAll(page.lines().subList(to, page.lines().size()));
        return lines;
    }

    /** A row of a table. */
    static String row(List<String> cells) {
        UnaryOperator<String> escaped = cell -> cell.replace("|", "\\|");
        return "| " + String.join(" | ", cells.stream().map(escaped).toList()) + " |";
    }
}
