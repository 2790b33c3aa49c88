// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

/** What would change a figure that is shown. */
public enum Lever {
    /** Another look at the pot. */
    A_CHECK,
    /** The day something is written to have happened. */
    A_DAY,
    /** Carrying the pot elsewhere. */
    A_MOVE,
    /** The days on which its place is cold. */
    COLD_DAYS_OF_PLACE,
    /** A figure of the grower's own. */
    OWN_FIGURE,
    /** How long its bulbs were cooled before they came. */
    DRY_COLD,
    WISH,
    /** How often its place is asked for. */
    INTERVAL,
    /** Another reading of a place. */
    A_READING,
    /** What is written of the ground: depth, soil, cover and months. */
    GROUND,
    /** What is read at the place, and the band it should stay in. */
    READINGS
}
