// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Impression.Evenness;
import sillbook.model.Variety.Scent;

/** The words for what a pot in flower was like in the room. */
public final class OutcomeTerms {
    public static final Vocabulary<Evenness> EVENNESSES = Vocabulary.<Evenness>of("word for the flowers of a pot")
            .with(Evenness.EVEN, "even", "all at once", "evenly", "uniform")
            .with(Evenness.SPREAD, "spread", "spread out", "one after another")
            .with(Evenness.RAGGED, "ragged", "uneven")
            .with(Evenness.NOT_SAID, "evenness not said");

    /** What follows the word scent, where the scent is that of a pot and was found, not promised. */
    public static final Vocabulary<Scent> SCENTS_FOUND = Vocabulary.<Scent>of("strength of scent")
            .with(Scent.NONE, "none", "no")
            .with(Scent.LIGHT, "light", "faint")
            .with(Scent.STRONG, "strong")
            .with(Scent.NOT_SAID, "not said");

    private OutcomeTerms() {}
}
