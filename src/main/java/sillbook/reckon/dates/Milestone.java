// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

/** The days that are reckoned: each is the one on which a stage starts. */
public enum Milestone {
    /** Potted, watered and standing where it is cold. */
    COLD,
    /** Brought out of the cold. */
    COOL_ROOM,
    WARM_ROOM,
    /** First flower. */
    BLOOM,
    AFTER_BLOOM
}
