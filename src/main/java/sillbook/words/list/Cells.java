// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.words.Complaint;
import sillbook.words.line.Bench;

/** The cells of one row; what is wrong with them is remembered. */
final class Cells {
    private static final int LONGEST = 1000;
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Cc}\\u00A0]+");

    private final Header header;
    private final Table.Row row;
    private final Bench bench;
    private final List<BadCell> bad = new ArrayList<>();

    /** @param bench with the journal as the rows before this one leave it */
    Cells(Header header, Table.Row row, Bench bench) {
        this.header = header;
        this.row = row;
        this.bench = bench;
    }

    Bench bench() {
        return bench;
    }

    int number() {
        return row.number();
    }

    List<BadCell> bad() {
        return List.copyOf(bad);
    }

    /** Whether every cell can be read; what cannot is all told at once. */
    boolean areRight(List<? extends Column<?, ?>> columns) {
        columns.forEach(this::check);
        return bad.isEmpty();
    }

    private void check(Column<?, ?> column) {
        String text = text(column);
        if (text.length() > LONGEST) {
            blame(column, "it is longer than " + LONGEST + " letters. Shorten it.");
        } else if (!text.isEmpty()) {
            column.sense()
                    .apply(text, bench)
                    .complaint()
                    .map(Complaint::sentence)
                    .ifPresent(why -> blame(column, why));
        } else if (column.isNeeded()) {
            blame(column, "it is empty, and should hold " + column.holds() + ".");
        }
    }

    /** What stands in a column, its blanks made plain; empty where nothing does, or where there is no such column. */
    String text(Column<?, ?> column) {
        String cell = header.place(column).map(row::cell).orElse("");
        return BLANKS.matcher(cell).replaceAll(" ").strip();
    }

    /** What a cell means; empty where nothing stands in it. */
    <T> Optional<T> get(Column<?, T> column) {
        return Optional.of(text(column))
                .filter(text -> !text.isEmpty())
                .flatMap(text -> column.sense().apply(text, bench).value());
    }

    /** The same of a column that there is no list without. */
    <T> T need(Column<?, T> column) {
        return get(column).orElseThrow(() -> new IllegalStateException("not checked: " + column.name()));
    }

    void blame(Column<?, ?> column, String sentence) {
        bad.add(new BadCell(column.name(), text(column), sentence));
    }
}
