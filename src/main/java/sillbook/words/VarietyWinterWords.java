// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import sillbook.model.Journal;
import sillbook.season.past.VarietyWinter;

/** A winter of one variety, as a line of a table says it: {@code ?} for what nobody wrote. */
public record VarietyWinterWords(VarietyWinter of, Journal journal) {
    private static final String NOT_WRITTEN = "?";

    /** {@code 2025-26}. */
    public String winter() {
        return journal.nameOf(of.winter());
    }

    /** {@code 3.5}; {@code failed} where no pot of it came to a score, because all failed. */
    public String score() {
        if (of.mean().isPresent()) {
            return Decimal.sayFixed(of.mean().getAsDouble(), 1);
        }
        return of.grown().stream().allMatch(one -> one.hasFailed()) ? "failed" : NOT_WRITTEN;
    }

    /** {@code 9 of 10}: bulbs that flowered. */
    public String flowers() {
        return of.bulbs().of() == 0
                ? NOT_WRITTEN
                : of.bulbs().hits() + " of " + of.bulbs().of();
    }

    /** {@code cellar, garage fridge}: where its pots had their cold; {@code none} where they had none. */
    public String coldAt() {
        return String.join(", ", places());
    }

    /** Each once, in the order of the pots. */
    public List<String> places() {
        return of.grown().stream()
                .map(one -> new GrownWords(one, journal).coldAt())
                .distinct()
                .toList();
    }

    public String noted() {
        return of.noted().orElse("");
    }
}
