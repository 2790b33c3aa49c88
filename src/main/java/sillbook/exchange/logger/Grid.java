// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.model.LoggerFormat.Separator;

/** The first lines of a file, parted by one of the separators: what a look goes by. */
record Grid(Separator separator, List<Row> rows) {
    /** Lines a look takes in; no thermometer's file has more of them before its readings. */
    private static final int LINES = 1000;

    /** So many devices at most give readings of one second. */
    private static final int MOST_ALIKE = 8;

    Grid {
        rows = List.copyOf(rows);
    }

    /**
     * A line, and its cells.
     *
     * @param number counted from 1
     */
    record Row(int number, Cells cells) {
        boolean isBlank() {
            return IntStream.range(0, cells.count()).allMatch(cells::isBlank);
        }

        /** What the cell of a column says, counted from 0; empty where there is none. */
        String text(int column) {
            return Encoding.text(cells.copy(column)).strip();
        }

        List<String> texts() {
            return IntStream.range(0, cells.count()).mapToObj(this::text).toList();
        }
    }

    /** The first lines as they stand. */
    static List<byte[]> lines(Source source, Encoding encoding) throws IOException {
        List<byte[]> found = new ArrayList<>();
        try (Lines lines = new Lines(encoding.open(source))) {
            while (found.size() < LINES && lines.advance()) {
                found.add(lines.copy());
            }
        }
        return found;
    }

    static Grid of(List<byte[]> lines, Separator separator) {
        List<Row> rows = new ArrayList<>();
        for (byte[] line : lines) {
            Cells cells = new Cells(separator.sign(), Cells.MOST);
            cells.split(line, 0, line.length);
            rows.add(new Row(rows.size() + 1, cells));
        }
        return new Grid(separator, rows);
    }

    /** Those of its lines for which something holds. */
    Grid only(Predicate<Row> kept) {
        return new Grid(separator, rows.stream().filter(kept).toList());
    }

    /** All its columns, counted from 0. */
    IntStream columns() {
        return IntStream.range(
                0, rows.stream().mapToInt(row -> row.cells().count()).max().orElse(0));
    }

    /** In how many lines the cell of a column is that. */
    long count(int column, CellTest test) {
        return rows.stream().filter(row -> test.in(row.cells(), column)).count();
    }

    /** What stands in the cells of a column, each once; blank ones not. */
    List<String> distinct(int column) {
        return rows.stream()
                .map(row -> row.text(column))
                .filter(text -> !text.isEmpty())
                .distinct()
                .toList();
    }

    /** The columns in which most lines have an instant; where it is open, all in one column, and the first. */
    Optional<Instants> instants() {
        Moment moment = new Moment();
        Stream<Instants> together = most(moment::readBoth).map(Instants::together).stream();
        Stream<Instants> apart = most(moment::readDate)
                .flatMap(date -> most(moment::readTime).map(time -> Instants.apart(date, time)))
                .stream();
        Stream<Instants> unix = mostVaried(moment::readUnix).map(Instants::unix).stream();
        return Stream.of(together, apart, unix)
                .flatMap(found -> found)
                .reduce((one, other) -> dated(other) > dated(one) ? other : one)
                .filter(found -> dated(found) > 0);
    }

    /** In how many lines an instant stands there. */
    long dated(Instants instants) {
        Moment moment = new Moment();
        return rows.stream().filter(row -> instants.read(row.cells(), moment)).count();
    }

    private Optional<Integer> most(CellTest test) {
        return columns()
                .boxed()
                .filter(column -> count(column, test) > 0)
                .reduce((one, other) -> count(other, test) > count(one, test) ? other : one);
    }

    /** A number that stays the same is a name of something, and no instant. */
    private Optional<Integer> mostVaried(CellTest test) {
        return most(test).filter(column -> {
            Grid lines = only(row -> test.in(row.cells(), column));
            return MOST_ALIKE * lines.distinct(column).size() > lines.rows().size();
        });
    }
}
