// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** The sorts of job a pot or a place can ask for. What starts, bounds and closes each stands in docs/jobs.md. */
public enum JobKind {
    POT_UP,
    INTO_COLD,
    CHECK,
    BRING_IN,
    MOVE_TO_WARMTH,
    WATCH_FOR_FLOWER,
    KEEP_COOL_IN_BLOOM,
    PAST_BLOOM,
    AFTERCARE,
    FEED,
    PUT_OUTDOORS,
    TAKE_INDOORS,
    START_REST,
    WAKE,
    REPOT,
    WRITE_OUTCOME,
    DAILY_CARE,
    DIG_TRENCH,
    POTS_IN,
    COVER_TRENCH,
    LIFT_POTS
}
