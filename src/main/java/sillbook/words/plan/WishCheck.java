// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.util.List;
import sillbook.words.Days;

/**
 * A look at the pots of a dated wish before their day.
 *
 * @param look what to look for
 * @param behind what helps where they are behind
 * @param ahead what helps where they are ahead
 * @param source who says so
 */
public record WishCheck(LocalDate day, String look, String behind, String ahead, String source) {

    /** All of it in one line. */
    public String line() {
        return Days.day(day) + ", " + look + " Behind: " + behind + ". Ahead: " + ahead + " (" + source + ").";
    }

    /** The day and what to look for, then what helps, then who says so. */
    public List<String> lines() {
        return List.of(
                Days.day(day) + ": " + look,
                "  behind: " + behind,
                "  ahead: " + ahead,
                "  (" + source + "; the day of the look: common practice)");
    }
}
