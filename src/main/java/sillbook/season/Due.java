// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

/** How a job stands on a day. */
public enum Due {
    /** A use-by day or a dated wish is in danger. */
    LATE,
    /** It can be done, and may wait. */
    READY,
    /** It is for today. */
    TODAY,
    /** It comes within the next 14 days. */
    SOON,
    LATER
}
