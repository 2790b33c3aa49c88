// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

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
                Close,
                Answer,
                Jot,
                CorrectEvent,
                RemovePots,
                Remove,
                Together {

    /** What this change comes to on that journal: a named step, or a sentence why it cannot be. */
    Decision on(Journal journal, Hand hand);
}
