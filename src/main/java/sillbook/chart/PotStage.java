// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

/** What a pot line shows of a pot, in the order a pot goes through. */
public enum PotStage {
    /** Not potted yet, or potted but not in the cold: the leader. */
    BEFORE,
    COLD,
    COOL_ROOM,
    WARM_ROOM,
    IN_BLOOM,
    AFTER_BLOOM,
    /** No longer there: nothing is drawn. */
    GONE
}
