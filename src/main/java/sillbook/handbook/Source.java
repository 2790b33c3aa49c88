// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.List;

/**
 * Who published something, and where.
 *
 * @param key how figures name it
 * @param locator an address, a journal's page or an identifier
 */
public record Source(String key, String institution, String title, String locator, Grade grade) {
    /** Named where a rule of the trade has no publication. */
    public static final String COMMON_PRACTICE = "common-practice";

    /** Whether any of these keys names a publication. */
    public static boolean isAnyPublished(List<String> keys) {
        return keys.stream().anyMatch(key -> !key.equals(COMMON_PRACTICE));
    }

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
