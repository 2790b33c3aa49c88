// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.ui.screen.Thing;

/**
 * The lines of a list.
 *
 * @param scrolled those that scroll when there is no room for all
 * @param pinned those that then stay in sight under them
 */
public record Rows(List<Row> scrolled, List<Row> pinned) {

    public Rows {
        scrolled = List.copyOf(scrolled);
        pinned = List.copyOf(pinned);
    }

    public static Rows of(List<Row> rows) {
        return new Rows(rows, List.of());
    }

    /** What the cursor can stand on, in order. */
    public List<Thing> things() {
        return all().flatMap(row -> row.thing().stream()).toList();
    }

    /** Only the lines of things that pass, under the headings that have any. */
    Rows only(Predicate<Row> passes) {
        return new Rows(only(scrolled, passes), only(pinned, passes));
    }

    private static List<Row> only(List<Row> rows, Predicate<Row> passes) {
        List<Row> kept = new ArrayList<>();
        List<Row> headings = new ArrayList<>();
        for (Row row : rows) {
            if (row.thing().isEmpty()) {
                headings.clear();
                headings.add(row);
            } else if (passes.test(row)) {
                kept.addAll(headings);
                headings.clear();
                kept.add(row);
            }
        }
        return kept;
    }

    Stream<Row> all() {
        return Stream.concat(scrolled.stream(), pinned.stream());
    }

    /** How many things scroll. */
    int scrolledThings() {
        return (int) scrolled.stream().filter(row -> row.thing().isPresent()).count();
    }

    /** Which line, of all, the so-many-eth thing stands on; empty when there are fewer. */
    Optional<Integer> lineOf(int thing) {
        List<Integer> lines = lines();
        return thing < lines.size() ? Optional.of(lines.get(thing)) : Optional.empty();
    }

    /** How many things stand on the scrolled lines before this one. */
    int thingsBefore(int line) {
        return (int) lines().stream().filter(at -> at < line).count();
    }

    private List<Integer> lines() {
        List<Row> rows = new ArrayList<>(scrolled);
        rows.addAll(pinned);
        return IntStream.range(0, rows.size())
                .filter(line -> rows.get(line).thing().isPresent())
                .boxed()
                .toList();
    }
}
