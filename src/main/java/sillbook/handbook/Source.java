// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

/**
 * Who published something, and where.
 *
 * @param key how figures name it
 * @param locator an address, a journal's page or an identifier
 */
public record Source(String key, String institution, String title, String locator, Grade grade) {

    /** How good a source is. */
    public enum Grade {
        /** The institution's own page, or a paper. */
        A,
        /** An institution's advice as another publisher repeats it. */
        B,
        /** A hobby, a trade or an unsigned text: a check of plausibility. */
        C,
        /** A rule of the trade for which no publication stands here. */
        COMMON_PRACTICE
    }
}
