// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.time.Instant;
import java.util.List;

/**
 * What a delivery has beside what the journal has.
 *
 * @param readings how many it has
 * @param fresh how many of these are of moments of which the journal has none
 * @param known how many the journal has already, with that temperature
 * @param repeated how many it has itself of the same moment, with that temperature
 * @param differing how many are of a moment of which the journal has another temperature
 * @param changed how many of the differing take the place of what the journal has
 * @param suspicious how many can hardly be true
 * @param isTakenIn whether the same bytes were taken in for the same place before; not told until all is gone through
 * @param differences the first of those that differ
 */
public record Comparison(
        int readings,
        int fresh,
        int known,
        int repeated,
        int differing,
        int changed,
        int suspicious,
        boolean isTakenIn,
        List<Difference> differences) {
    /** So many that differ are listed. */
    public static final int LISTED = 100;

    public Comparison {
        differences = List.copyOf(differences);
    }

    /**
     * Two temperatures of one moment, in thousandths of a degree.
     *
     * @param line where the delivery has it
     * @param isChanged whether that of the delivery stands from now on
     */
    public record Difference(Instant at, int journal, int delivery, int line, boolean isChanged) {}
}
