// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Entity;
import sillbook.words.Counts;
import sillbook.words.Heard;
import sillbook.words.line.Bench;

/**
 * A list as it was understood, row by row.
 *
 * @param leftOut names of columns that mean nothing here
 */
public record ListReading(ListSort sort, List<ListedRow> rows, List<String> leftOut) {
    /** As many rows as one step is to have. */
    public static final int MOST_ROWS = 2000;

    public ListReading {
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
    }

    /** Reads a table; a complaint where it has no row, or where its header cannot be a list's. */
    public static Heard<ListReading> read(Table table, ListSort sort, Bench bench) {
        if (table.rows().isEmpty()) {
            return Heard.not(
                    "no rows",
                    "There is nothing under the names of the columns. Write a row for each of the " + sort.word()
                            + ".");
        }
        if (table.rows().size() > MOST_ROWS) {
            return Heard.not(
                    "too long",
                    "The list has " + Counts.grouped(table.rows().size()) + " rows, and " + Counts.grouped(MOST_ROWS)
                            + " are the most. Split it.");
        }
        return Header.read(table.header(), sort)
                .map(header -> new ListReading(sort, rows(table, sort.form(), header, bench), header.leftOut()));
    }

    private static <E extends Entity<E>> List<ListedRow> rows(
            Table table, ListForm<E> form, Header header, Bench bench) {
        RowReading<E> reading = new RowReading<>(form, header, bench);
        table.rows().forEach(reading::read);
        return reading.rows();
    }

    /** How many rows came to that. */
    public long count(Outcome outcome) {
        return rows.stream().filter(row -> row.outcome() == outcome).count();
    }

    /** Whether nothing in it is wrong. */
    public boolean isRight() {
        return count(Outcome.WRONG) == 0;
    }

    /** All of it as one step; empty while anything is wrong, and where there is nothing to write. */
    public Optional<Change> change() {
        List<Change> changes = rows.stream()
                .flatMap(row -> row.writes().stream())
                .<Change>map(WriteDown::new)
                .toList();
        return isRight() && !changes.isEmpty() ? Optional.of(new Together(stepName(), changes)) : Optional.empty();
    }

    /** {@code list of varieties imported, 5 new, 1 changed}. */
    private String stepName() {
        return "list of " + sort.word() + " imported, " + counts(Outcome.NEW, Outcome.CHANGED);
    }

    /** {@code 5 new, 2 same, 1 wrong}. */
    public String counts() {
        return counts(Outcome.values());
    }

    private String counts(Outcome... outcomes) {
        return String.join(
                ", ",
                Arrays.stream(outcomes)
                        .filter(outcome -> count(outcome) > 0)
                        .map(outcome -> count(outcome) + " " + outcome.word())
                        .toList());
    }

    /** Why it cannot be imported, or need not be; empty where it can. */
    public Optional<String> hindrance() {
        long wrong = count(Outcome.WRONG);
        if (wrong > 0) {
            return Optional.of(Counts.of(wrong, "row") + (wrong == 1 ? " is" : " are")
                    + " wrong, so nothing is imported. Mend the file, and import it again.");
        }
        return change().isPresent() ? Optional.empty() : Optional.of("All that the list says is in the book already.");
    }
}
