// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.List;

/**
 * The columns whose figures are cut in two, because commas stand both between cells and before decimals. Every line then has more cells than
 * there are columns.
 *
 * @param columns how many there are
 * @param cut which of them are cut, counted from 0, in order
 */
record Joined(int columns, List<Integer> cut) {
    static final Joined NONE = new Joined(0, List.of());

    Joined {
        cut = List.copyOf(cut);
    }

    boolean isNone() {
        return cut.isEmpty();
    }

    /** In which cell a column stands, where all of these figures are cut. */
    int cell(int column) {
        int before = 0;
        for (int one : cut) {
            if (one < column) {
                before++;
            }
        }
        return column + before;
    }

    /** To which column a cell belongs. */
    int column(int cell) {
        int before = 0;
        for (int one : cut) {
            if (one + before < cell) {
                before++;
            }
        }
        return cell - before;
    }

    /** Whether a figure stands in this cell and the next. */
    private boolean isCut(Cells cells, int cell) {
        return cell + 1 < cells.count() && isDigits(cells, cell + 1);
    }

    static boolean isDigits(Cells cells, int cell) {
        if (cells.isBlank(cell)) {
            return false;
        }
        byte[] bytes = cells.bytes();
        for (int at = cells.from(cell); at < cells.to(cell); at++) {
            if (bytes[at] < '0' || bytes[at] > '9') {
                return false;
            }
        }
        return true;
    }

    /**
     * Where the figure of a column ends; -1 where that cannot be told. A figure without decimals has one cell only. Where one column alone is
     * cut, no other has bare digits, so what follows tells; with several, a line that has not all cells does not tell which is which.
     */
    int end(Cells cells, int column) {
        int cell = cell(column);
        if (cell >= cells.count()) {
            return -1;
        }
        boolean isWhole = cells.count() >= columns + cut.size();
        boolean isAlone = cut.size() == 1;
        if (isCut(cells, cell)) {
            return isWhole || isAlone ? cells.to(cell + 1) : -1;
        }
        return isAlone || isWhole ? cells.to(cell) : -1;
    }
}
