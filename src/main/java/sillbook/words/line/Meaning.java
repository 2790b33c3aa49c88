// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

/**
 * One fact that was understood.
 *
 * @param says {@code potted Wed 14 Oct 2026, 90 days ago}
 * @param warning what is amiss with it, to stand at its right: {@code room for 3, not 6}; may be empty
 */
public record Meaning(String says, String warning) {
    public static Meaning of(String says) {
        return new Meaning(says, "");
    }
}
