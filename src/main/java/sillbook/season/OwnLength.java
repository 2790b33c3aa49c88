// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import sillbook.model.Id;
import sillbook.model.Pot;

/**
 * How long a stage really took. Pots made together that began it on the same day stood through the same weather, so they
 * are one length and not several.
 *
 * @param pots by label, at least one
 * @param from the day the stage began
 * @param days to its end; the mean of the pots
 * @param under the conditions it was under; the mean of the pots
 */
public record OwnLength(List<Id<Pot>> pots, LocalDate from, double days, Conditions under) {
    public OwnLength {
        pots = List.copyOf(pots);
    }
}
