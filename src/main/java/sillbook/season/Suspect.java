// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import sillbook.model.Cause;

/**
 * A cause that a failure could have, and what the journal says of it.
 *
 * @param clues what speaks for it; else the one thing that is missing, or the reason why nothing does
 */
public record Suspect(Cause cause, Verdict verdict, List<Clue> clues) {
    public Suspect {
        clues = List.copyOf(clues);
        if (clues.isEmpty()) {
            throw new IllegalArgumentException("nothing is said of " + cause);
        }
    }

    /** What the journal's own record comes to. */
    public enum Verdict {
        SPEAKS_FOR,
        CANNOT_BE_TOLD,
        NOTHING_SPEAKS_FOR
    }
}
