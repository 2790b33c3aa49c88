// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Optional;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;

/**
 * Pots of a batch that stand alike.
 *
 * @param place where they stand; empty when nobody wrote it, or they are gone
 * @param end how their winter ended, where it did
 * @param pots by label
 */
public record BatchPart(Stage stage, Optional<Id<Place>> place, Optional<End> end, List<Id<Pot>> pots) {
    public BatchPart {
        pots = List.copyOf(pots);
    }
}
