// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;

/** One thing the grower does to the journal. It becomes one transaction and one step that can be taken back. */
public sealed interface Change
        permits WriteDown,
                PotUp,
                Plant,
                Move,
                Check,
                Flower,
                CareFor,
                TendGround,
                Close,
                Answer,
                Choose,
                AdoptPlan,
                OrderChosen,
                Display,
                Jot,
                TakeReading,
                CorrectEvent,
                RemovePots,
                Remove,
                Together,
                Succession {

    /** What this change comes to on that journal: a named step, or a sentence why it cannot be. */
    default Decision on(Journal journal, Hand hand) {
        return names().allMatch(journal::contains)
                ? decide(journal, hand)
                : new Refusal("Something named here is no longer in the journal; another window may have removed it."
                        + " Look again, and name it anew.");
    }

    /** The entries it names, any of which may be gone by now. */
    Stream<? extends Id<?>> names();

    /** What it comes to where all that it names is there. */
    Decision decide(Journal journal, Hand hand);
}
