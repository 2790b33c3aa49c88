// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import sillbook.model.Outcome.Again;
import sillbook.model.Variety.Scent;

/**
 * What a pot in flower was like in the room, and what its grower would do another winter.
 *
 * @param scent as it was found; what catalogues say of it stands with the variety
 * @param how what to do differently, in the grower's words; empty unless the answer is {@link Again#DIFFERENTLY}, and
 *     then too while it is left open
 */
public record Impression(Evenness evenness, Scent scent, Again again, String how) {

    /** Nothing was said of it. */
    public static final Impression NONE = of(Again.NOT_SAID);

    public Impression {
        if (again != Again.DIFFERENTLY && !how.isEmpty()) {
            throw new IllegalArgumentException("nothing is done differently when the answer is " + again + ": " + how);
        }
    }

    /** Whether the flowers of a pot were one picture. */
    public enum Evenness {
        NOT_SAID,
        /** All at once and at one height. */
        EVEN,
        /** One after another. */
        SPREAD,
        /** Now tall, now short, some over when others begin. */
        RAGGED
    }

    /** One that answers whether to do it again, and no more. */
    public static Impression of(Again again) {
        return new Impression(Evenness.NOT_SAID, Scent.NOT_SAID, again, "");
    }
}
