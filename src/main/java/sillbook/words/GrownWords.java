// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.season.past.Grown;

/** A variety in a pot of a winter, as a line of a table says it: {@code ?} for what nobody wrote. */
public record GrownWords(Grown grown, Journal journal) {
    private static final String NOT_WRITTEN = "?";

    /** {@code 2025-26}. */
    public String winter() {
        return journal.nameOf(grown.winter());
    }

    public String variety() {
        return new PotNames(journal).variety(grown.planting().variety());
    }

    /** {@code cellar}; {@code none} where it had no cold. */
    public String coldAt() {
        boolean hadNone = grown.isTold() && grown.daysOfCold() == 0;
        return grown.coldAt().map(new PotNames(journal)::place).orElse(hadNone ? "none" : NOT_WRITTEN);
    }

    /** In the cold, whole weeks. */
    public String weeks() {
        return grown.isTold() ? Long.toString(Math.round(Weeks.ofDays((double) grown.daysOfCold()))) : NOT_WRITTEN;
    }

    public String pottingMix() {
        return grown.pot()
                .pottingMix()
                .map(mix -> journal.pottingMixes().get(mix).name())
                .orElse(NOT_WRITTEN);
    }

    /** {@code 4}; {@code failed} without a score. */
    public String score() {
        return grown.score().map(String::valueOf).orElse(grown.hasFailed() ? "failed" : NOT_WRITTEN);
    }

    /** {@code 4 of 5}: flowers of bulbs. */
    public String flowers() {
        return grown.outcome()
                .flatMap(Outcome::flowers)
                .map(flowers -> flowers + " of " + grown.planting().count())
                .orElse(NOT_WRITTEN);
    }
}
