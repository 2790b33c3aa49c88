// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/**
 * How true the windows of learnt lengths were in the winters before a season: settled once, with the first that is foretold in
 * it, so that its windows all rest on the same.
 *
 * @param held how many of them would have held the day as they were before any widening
 * @param of how many there were
 * @param reach hundredths of half a window, from its likely day, that would have held 8 days of 10
 */
public record PastWindows(Id<PastWindows> id, Season season, int held, int of, int reach)
        implements Entity<PastWindows> {
    public PastWindows {
        if (held < 0 || held > of || reach < 0) {
            throw new IllegalArgumentException(held + " of " + of + ", " + reach);
        }
    }
}
