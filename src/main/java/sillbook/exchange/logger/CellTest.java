// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/** Whether a cell, a stretch of bytes, is something. */
@FunctionalInterface
interface CellTest {
    boolean is(byte[] bytes, int from, int to);

    /** The same of the cell in a column, which must be there and hold something. */
    default boolean in(Cells cells, int column) {
        return !cells.isBlank(column) && is(cells.bytes(), cells.from(column), cells.to(column));
    }
}
