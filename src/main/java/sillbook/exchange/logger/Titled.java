// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Optional;
import sillbook.words.logger.Understood.Column;

/**
 * The first lines of a file, told apart: what stands before the readings, the heading, the lines with instants.
 *
 * @param heading the lines that name the columns, mostly one or none; a second may hold units
 * @param before the lines above them
 * @param data the lines below that have an instant
 */
record Titled(Grid grid, Instants instants, List<Grid.Row> heading, List<Grid.Row> before, Grid data) {
    Titled {
        heading = List.copyOf(heading);
        before = List.copyOf(before);
    }

    static Titled of(Grid grid, Instants instants) {
        Moment moment = new Moment();
        List<Grid.Row> rows = grid.rows();
        int first = first(rows, instants, moment);
        int named = named(rows, first, instants, moment);
        int begin = named < 0 ? first : named;
        int data = Math.max(first, begin);
        while (data < rows.size() && !instants.read(rows.get(data).cells(), moment)) {
            data++;
        }
        List<Grid.Row> below = rows.subList(data, rows.size());
        return new Titled(
                grid,
                instants,
                named < 0 ? List.of() : rows.subList(named, data),
                rows.subList(0, named < 0 ? data : named),
                new Grid(grid.separator(), below).only(row -> instants.read(row.cells(), moment)));
    }

    private static int first(List<Grid.Row> rows, Instants instants, Moment moment) {
        int at = 0;
        while (at < rows.size() && !instants.read(rows.get(at).cells(), moment)) {
            at++;
        }
        return at;
    }

    /** The line whose cell over the instants names them; else the last line before them that has as many cells as to reach them. */
    private static int named(List<Grid.Row> rows, int first, Instants instants, Moment moment) {
        for (int at = 0; at < rows.size(); at++) {
            Grid.Row row = rows.get(at);
            if (reaches(row, instants)
                    && !instants.read(row.cells(), moment)
                    && Heading.isInstant(row.text(instants.date()))
                    && (at < first || isNamedThroughout(row, instants))) {
                return at;
            }
        }
        for (int at = first - 1; at >= 0; at--) {
            if (reaches(rows.get(at), instants) && isNamedThroughout(rows.get(at), instants)) {
                return at;
            }
        }
        return -1;
    }

    private static boolean reaches(Grid.Row row, Instants instants) {
        return row.cells().count() > 1
                && row.cells().count() > instants.time()
                && !row.text(instants.date()).isEmpty();
    }

    /** Whether it names another column than that of the instants, and has no figure. */
    private static boolean isNamedThroughout(Grid.Row row, Instants instants) {
        List<String> texts = row.texts();
        for (int column = 0; column < texts.size(); column++) {
            String name = texts.get(column);
            if (!instants.has(column) && Heading.isTemperature(name)) {
                return true;
            }
        }
        return false;
    }

    boolean hasHeading() {
        return !heading.isEmpty();
    }

    /** How many columns the heading names. */
    int named() {
        List<String> names = heading.isEmpty() ? List.of() : heading.get(0).texts();
        int count = names.size();
        while (count > 0 && names.get(count - 1).isEmpty()) {
            count--;
        }
        return count;
    }

    /** What the heading calls a column, counted from 0; a unit that stands under its name belongs to it. */
    String name(int column) {
        return heading.stream()
                .map(row -> row.text(column))
                .filter(text -> !text.isEmpty())
                .collect(joining(" "));
    }

    Column column(int column) {
        return new Column(column + 1, name(column));
    }

    int firstLine() {
        return heading.isEmpty()
                ? data.rows().get(0).number()
                : heading.get(heading.size() - 1).number() + 1;
    }

    /** What the lines above the heading say, one after another. */
    List<String> sayings() {
        return before.stream().map(row -> String.join(" ", row.texts())).toList();
    }

    Optional<Grid.Row> firstData() {
        return data.rows().stream().findFirst();
    }
}
