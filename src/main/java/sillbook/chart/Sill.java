// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;

/** The line under the months, a cell each: a flower where a pot is, was or should be in bloom. */
public record Sill(List<Cell> cells) {
    /** What stands on the sill. */
    public enum Cell {
        EMPTY,
        FLOWER,
        FLOWER_FORETOLD
    }

    public Sill {
        cells = List.copyOf(cells);
    }

    /** From the days of bloom of every pot; in today's cell only what is already in bloom counts. */
    public static Sill of(RulerLayout ruler, Collection<Days> blooms) {
        return new Sill(IntStream.range(0, ruler.cells())
                .mapToObj(cell -> cell(ruler, cell, blooms))
                .toList());
    }

    private static Cell cell(RulerLayout ruler, int cell, Collection<Days> blooms) {
        Days days = ruler.days(cell);
        Days seen = days.contains(ruler.today())
                ? new Days(days.fromInclusive(), ruler.today().plusDays(1))
                : days;
        if (blooms.stream().noneMatch(seen::overlaps)) {
            return Cell.EMPTY;
        }
        return ruler.isForetold(cell) ? Cell.FLOWER_FORETOLD : Cell.FLOWER;
    }
}
