// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

/** Whether a pot may come in from the cold. */
public enum Verdict {
    /** Cold enough and rooted. */
    MAY_COME_IN,
    /** Cold enough, but nobody has looked whether it is rooted. */
    CHECK_FIRST,
    /** Cold enough, but not rooted: not ready. */
    NO_ROOTS,
    /** Not cold enough yet. */
    WEEKS_SHORT,
    /** A tall shoot before the weeks are had: it stands too warm, and should be moved colder, not in. */
    TOO_WARM
}
