// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import sillbook.model.Cause;

/**
 * A cause that a failure could have, and what the journal says of it.
 *
 * @param clues what speaks for it; else the one thing that is missing, or the reason why nothing does
 * @param fits how what was found in the pot fits it, or speaks against it
 */
public record Suspect(Cause cause, Verdict verdict, List<Clue> clues, List<CauseFit> fits) {
    public Suspect {
        clues = List.copyOf(clues);
        fits = List.copyOf(fits);
        if (clues.isEmpty()) {
            throw new IllegalArgumentException("nothing is said of " + cause);
        }
    }

    /** How many of what was found fit it, less how many speak against it. */
    public int weight() {
        return fits.stream().mapToInt(fit -> fit.speaksFor() ? 1 : -1).sum();
    }

    /** What the journal's own record comes to. */
    public enum Verdict {
        SPEAKS_FOR,
        CANNOT_BE_TOLD,
        NOTHING_SPEAKS_FOR
    }
}
