// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.Set;

/**
 * What was found in a pot that did not do well, and why its grower thinks so.
 *
 * @param signs what was seen to be wrong
 * @param roots what they were like when the pot was turned out, if it was
 * @param cutBud what a bud or bulb showed when cut, in the grower's words; empty when none was
 * @param cause what the grower took for the cause; empty while it is left open
 */
public record Failure(Set<Sign> signs, Optional<Roots> roots, String cutBud, Optional<Cause> cause) {

    /** Nothing was found to be wrong. */
    public static final Failure NONE = new Failure(Set.of(), Optional.empty(), "", Optional.empty());

    public Failure {
        signs = Sorted.copyOf(signs);
    }

    public Failure withSigns(Set<Sign> seen) {
        return new Failure(seen, roots, cutBud, cause);
    }

    public Failure withRoots(Optional<Roots> found) {
        return new Failure(signs, found, cutBud, cause);
    }

    public Failure withCutBud(String words) {
        return new Failure(signs, roots, words, cause);
    }

    public Failure withCause(Optional<Cause> confirmed) {
        return new Failure(signs, roots, cutBud, confirmed);
    }

    /** Signs of a pot that did not do well. */
    public enum Sign {
        LEAVES_ONLY,
        BROWN_BUD,
        SHORT_AND_STUCK,
        FLOPPY,
        ROT,
        NOTHING_CAME
    }

    /** What the roots were like. */
    public enum Roots {
        NONE,
        BROWN,
        WHITE,
        /** White, and out through the holes. */
        THROUGH
    }
}
