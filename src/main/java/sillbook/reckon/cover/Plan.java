// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/**
 * The best found.
 *
 * @param pulls the pots that come in, group by group, within each by their day
 * @param longestGap the most days in a row without anything in bloom; not minimised, and not the same for all plans as good
 * @param bound for each goal, a number that no plan can go below which does as well at the goals before it
 */
public record Plan(List<Pull> pulls, Tally tally, int longestGap, Tally bound) {
    public Plan {
        pulls = List.copyOf(pulls);
    }

    /** Whether no plan is better. */
    public boolean isProven() {
        return tally.equals(bound);
    }
}
