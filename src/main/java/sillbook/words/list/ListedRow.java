// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import sillbook.model.Entity;

/**
 * A row of a list as it was understood.
 *
 * @param number as a spreadsheet counts it
 * @param name what the row is about: {@code 'Marrow Lane'}; may be empty in a row that is wrong
 * @param says of what is new, every fact; of what changes, what is other
 * @param bad what is wrong with it
 * @param writes what it writes down, in that order
 */
public record ListedRow(
        int number,
        String name,
        Outcome outcome,
        List<String> says,
        List<BadCell> bad,
        List<? extends Entity<?>> writes) {
    public ListedRow {
        says = List.copyOf(says);
        bad = List.copyOf(bad);
        writes = List.copyOf(writes);
    }

    /** All there is to say of it: {@code 'Marrow Lane': tulip triumph; 45 cm}; of what is wrong each cell by itself. */
    public List<String> lines() {
        return outcome == Outcome.WRONG
                ? bad.stream().map(BadCell::says).map(this::line).toList()
                : List.of(line(String.join("; ", says)));
    }

    private String line(String facts) {
        return facts.isEmpty() || name.isEmpty() ? name + facts : name + ": " + facts;
    }
}
