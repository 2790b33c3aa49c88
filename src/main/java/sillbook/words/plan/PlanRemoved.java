// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.Optional;
import sillbook.model.Entity;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.words.Counts;

/** What becomes of the pots of a plan that is removed. */
public final class PlanRemoved {
    private PlanRemoved() {}

    /** {@code 12 pots that go by it stay, without its days and places}; empty where no pot goes by it, or it is no plan. */
    public static Optional<String> left(Entity<?> gone, Journal journal) {
        long pots = Intention.by(gone.id(), journal).count();
        return pots == 0
                ? Optional.empty()
                : Optional.of(Counts.of(pots, "pot") + (pots == 1 ? " that goes by it stays" : " that go by it stay")
                        + ", without its days and places");
    }
}
