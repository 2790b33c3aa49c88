// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

/**
 * A cell that cannot be imported.
 *
 * @param column by its name in Sillbook's words, or the header's own where it has none
 * @param found what stands there; may be empty
 * @param sentence what is wrong with it, and what would be right
 */
public record BadCell(String column, String found, String sentence) {
    /** {@code height: 'tall' is no length. Write it as 19, 19 cm or 7.5in.} */
    public String says() {
        return column + ": " + sentence;
    }
}
