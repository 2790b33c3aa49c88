// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;

/** Finds the columns whose figures are cut in two by their own decimal comma. */
record JoinedSearch(Titled titled, LoggerFormat told) {
    private static final double MOST = 0.8;

    /** Empty where lines have too many cells and it cannot be told which of them belong together. */
    Optional<Joined> find() {
        if (titled.grid().separator() != Separator.COMMA || told.decimalSign().equals(Optional.of(DecimalSign.POINT))) {
            return Optional.of(Joined.NONE);
        }
        if (!titled.hasHeading()) {
            return Optional.of(unnamed());
        }
        int tooMany = mostCells() - titled.named();
        return tooMany <= 0 ? Optional.of(Joined.NONE) : named(tooMany);
    }

    /** Without a heading no line has a cell too many; only where commas were said to be decimal signs are figures cut. */
    private Joined unnamed() {
        boolean isTold = told.decimalSign().equals(Optional.of(DecimalSign.COMMA));
        List<Integer> pairs = titled.data()
                .columns()
                .filter(cell -> !titled.instants().has(cell) && isPair(cell))
                .boxed()
                .toList();
        Optional<Integer> cut = told.column()
                .map(number -> number - 1)
                .filter(pairs::contains)
                .or(() -> pairs.stream().findFirst());
        return isTold && cut.isPresent() ? new Joined(mostCells() - 1, List.of(cut.get())) : Joined.NONE;
    }

    private Optional<Joined> named(int tooMany) {
        List<Integer> cut = new ArrayList<>();
        int columns = titled.named();
        boolean isOtherWhole = false;
        for (int column = 0; column < columns; column++) {
            int cell = column + cut.size();
            if (titled.instants().has(cell)) {
                continue;
            }
            if (cut.size() < tooMany && isPair(cell)) {
                cut.add(column);
            } else {
                isOtherWhole |= isMostly(cell, (cells, at) -> Joined.isDigits(cells, at));
            }
        }
        if (cut.isEmpty()) {
            return Optional.of(Joined.NONE);
        }
        return cut.size() == tooMany && !isOtherWhole ? Optional.of(new Joined(columns, cut)) : Optional.empty();
    }

    /** Whether whole numbers stand in it, and digits alone in the next, and nowhere a decimal point. */
    private boolean isPair(int cell) {
        Figure whole = new Figure('.');
        CellTest integer =
                (bytes, from, to) -> whole.read(bytes, from, to) && whole.unitSaid() == 0 && !hasSign(bytes, from, to);
        boolean isPointed = titled.data().count(cell, JoinedSearch::hasSign) > 0;
        return !isPointed && isMostly(cell, (cells, at) -> integer.in(cells, at) && Joined.isDigits(cells, at + 1));
    }

    private static boolean hasSign(byte[] bytes, int from, int to) {
        for (int at = from; at < to; at++) {
            if (bytes[at] == '.' || bytes[at] == ',' || bytes[at] == 'e' || bytes[at] == 'E') {
                return true;
            }
        }
        return false;
    }

    private interface InCells {
        boolean is(Cells cells, int cell);
    }

    /** Whether it is so in most of the lines that have all cells. */
    private boolean isMostly(int cell, InCells test) {
        int most = mostCells();
        Grid whole = titled.data().only(row -> cells(row) == most);
        long found =
                whole.rows().stream().filter(row -> test.is(row.cells(), cell)).count();
        return found > 0 && found >= MOST * whole.rows().size();
    }

    /** How many cells a line has at most, blank ones at the end left out. */
    private int mostCells() {
        return titled.data().rows().stream().mapToInt(JoinedSearch::cells).max().orElse(0);
    }

    private static int cells(Grid.Row row) {
        int count = row.cells().count();
        while (count > 0 && row.cells().isBlank(count - 1)) {
            count--;
        }
        return count;
    }
}
