// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;

/**
 * Cells in rows, as they were written.
 *
 * @param header the names of the columns
 * @param rows what is under them; rows without a word in them are left out
 */
public record Table(List<String> header, List<Row> rows) {
    public Table {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * One row.
     *
     * @param number counted from 1, header and empty rows included, as a spreadsheet counts them
     * @param cells from the left; a short row lacks its last ones
     */
    public record Row(int number, List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** What stands in a column; nothing where the row is too short. */
        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }
}
