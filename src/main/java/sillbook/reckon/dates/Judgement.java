// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Whether a pot that has been begun can flower on its wished day.
 *
 * @param bloom when it flowers as things stand
 * @param needed when each stage had or has to start for the wish, reckoned backward from it
 * @param reason why the wish cannot be reached; only when it cannot
 */
public record Judgement(LocalDate wish, Verdict verdict, Optional<Reason> reason, Window bloom, Stages needed) {

    /** How the wish stands. */
    public enum Verdict {
        /** The usual lengths bring it to flower by then, or it can wait in the cold so long. */
        REACHABLE,
        /** Only shorter than usual lengths would do. */
        LATE,
        /** Even the shortest published lengths would not do. */
        TOO_LATE,
        /** No day of bringing it out leads there. */
        NOT_REACHABLE
    }

    /** Why a wish cannot be reached. */
    public enum Reason {
        /** The wished day is not after the day the pot began. */
        BEFORE_START,
        /** It flowers, and is over, before the wished day, however long it may wait in the cold. */
        FLOWERS_BEFORE
    }
}
