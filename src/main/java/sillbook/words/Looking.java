// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

/** Which way a day without a year, or a day of the week, is looked for from today. */
public enum Looking {
    /** For what has happened: {@code fri} is the last Friday, today's included. */
    BACK,
    /** For what is meant to happen: {@code fri} is the coming Friday. */
    AHEAD
}
