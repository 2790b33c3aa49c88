// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** Where a pot is in its winter, from before it is potted to after its end. */
public enum Stage {
    WAITING,
    COLD,
    COOL_ROOM,
    WARM_ROOM,
    IN_BLOOM,
    AFTER_BLOOM,
    DONE;

    /** Whether this stage comes before the other. */
    public boolean isBefore(Stage other) {
        return compareTo(other) < 0;
    }
}
