// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.ArrayList;
import java.util.List;

/**
 * A file of lines with cells between tabs, under a line of column names. Empty cells at a line's end may be left out; empty
 * lines, and those that begin with {@code #}, say nothing. Written without patterns and streams: it is read before the first
 * screen stands.
 */
final class Table {
    private final String name;
    private final List<String> columns;

    private Table(String name, List<String> columns) {
        this.name = name;
        this.columns = columns;
    }

    /**
     * The rows of a file.
     *
     * @param columns the names its first row must have
     * @throws IllegalStateException when it has others, or a line has more cells than there are columns
     */
    static List<Row> read(String name, String text, List<String> columns) {
        var table = new Table(name, columns);
        List<Row> rows = new ArrayList<>();
        boolean isHeaded = false;
        int number = 0;
        int start = 0;
        while (start < text.length()) {
            int end = end(text, '\n', start, text.length());
            number++;
            if (end > start && text.charAt(start) != '#') {
                Row row = table.row(number, text, start, end);
                if (isHeaded) {
                    rows.add(row);
                } else {
                    table.checkHeader(row);
                    isHeaded = true;
                }
            }
            start = end + 1;
        }
        return rows;
    }

    private Row row(int number, String text, int start, int end) {
        List<String> cells = new ArrayList<>(columns.size());
        int from = start;
        while (from <= end) {
            int to = end(text, '\t', from, end);
            cells.add(text.substring(from, to));
            from = to + 1;
        }
        if (cells.size() > columns.size()) {
            throw new IllegalStateException(
                    name + ", line " + number + ": " + cells.size() + " cells, where " + columns.size() + " belong");
        }
        return new Row(number, cells);
    }

    private void checkHeader(Row row) {
        if (!row.cells.equals(columns)) {
            throw new IllegalStateException(name + " should have the columns " + columns + ", not " + row.cells);
        }
    }

    private static int end(String text, char mark, int from, int limit) {
        int at = text.indexOf(mark, from);
        return at < 0 || at > limit ? limit : at;
    }

    /** One line of a table. */
    final class Row {
        private final int number;
        private final List<String> cells;

        private Row(int number, List<String> cells) {
            this.number = number;
            this.cells = cells;
        }

        /** A cell, empty when the line ends before it. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }

        /** The entries of a cell between commas. */
        List<String> list(int column) {
            String cell = cell(column);
            List<String> entries = new ArrayList<>();
            int from = 0;
            while (from < cell.length()) {
                int to = end(cell, ',', from, cell.length());
                entries.add(cell.substring(from, to));
                from = to + 1;
            }
            return entries;
        }

        /** The failure to understand this line. */
        IllegalStateException unclear(int column) {
            return new IllegalStateException(
                    name + ", line " + number + ": '" + cell(column) + "' is no " + columns.get(column));
        }
    }
}
