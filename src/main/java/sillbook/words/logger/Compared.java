// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.util.List;

/**
 * What the readings of a file are beside those the journal has.
 *
 * @param fresh of moments of which it has none
 * @param known that it has already
 * @param repeated that the file itself has twice
 * @param changed that would take the place of another temperature of that moment
 * @param differing of a moment of which it has another temperature, which stays
 * @param isTakenIn whether the same bytes were taken in for that place before
 * @param differences the first of those that are not what the journal has
 */
public record Compared(
        long fresh,
        long known,
        long repeated,
        long changed,
        long differing,
        boolean isTakenIn,
        List<Difference> differences) {
    public Compared {
        differences = List.copyOf(differences);
    }

    /**
     * Two temperatures of one moment, in thousandths of a degree Celsius.
     *
     * @param line where the file has it
     * @param isChanged whether that of the file stands from now on
     */
    public record Difference(int line, int journal, int file, boolean isChanged) {}

    /** Whether taking it in would change anything. */
    public boolean hasNews() {
        return !isTakenIn && fresh + changed > 0;
    }
}
