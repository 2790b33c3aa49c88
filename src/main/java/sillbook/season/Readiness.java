// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Findings.Roots;
import sillbook.model.Length;

/**
 * Whether a pot in the cold may come in, and what that was judged from.
 *
 * @param coldEnoughOn the day its weeks were, or will be, had
 * @param roots as last seen, if that is recent enough to speak
 * @param shoot as last seen
 * @param since the first day it might have come in, when it may
 */
public record Readiness(
        Verdict verdict,
        LocalDate coldEnoughOn,
        Optional<Noted<Roots>> roots,
        Optional<Noted<Length>> shoot,
        Optional<LocalDate> since) {

    /** The day on which a look that found no roots says nothing any more; empty where there was none. */
    public Optional<LocalDate> lookAgainOn() {
        return roots.filter(seen -> seen.value() == Roots.NONE)
                .map(seen -> seen.day().likely().plusDays(Signs.NO_ROOTS_SPEAKS_DAYS));
    }
}
