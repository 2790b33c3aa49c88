// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;

/**
 * The winter of a pot, or of a batch, as one line.
 *
 * @param pots the pot, or the pots of a batch, by label
 * @param batch the batch; its line is drawn where most of it stands
 * @param phases in order of days; what has happened before what is foretold
 * @param next the next job of that pot, or of most of the batch
 */
public record PotLine(List<Id<Pot>> pots, Optional<BatchShare> batch, List<Phase> phases, Optional<Job.OfPots> next) {
    public PotLine {
        pots = List.copyOf(pots);
        phases = List.copyOf(phases);
    }
}
