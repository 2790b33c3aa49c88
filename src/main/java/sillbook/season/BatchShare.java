// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sillbook.model.Batch;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Stage;

/**
 * The batch that a row stands for.
 *
 * @param pots all of its pots that are not done, by label
 * @param counts how many of them are in each stage, in the order of the stages
 */
public record BatchShare(Id<Batch> batch, List<Id<Pot>> pots, Map<Stage, Integer> counts) {
    public BatchShare {
        pots = List.copyOf(pots);
        counts = Collections.unmodifiableMap(new EnumMap<>(counts));
    }

    /** Whether its pots are no longer all in the same stage. */
    public boolean isParted() {
        return counts.size() > 1;
    }
}
