// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import sillbook.reckon.shelf.Stays;
import sillbook.reckon.shelf.Stays.Allocation;

/** How much of a shelf pots want that come and go and keep their place, in plain lines. */
public record StayFigures(Stays stays, Allocation allocation) {
    public static StayFigures of(Stays stays) {
        return new StayFigures(stays, stays.allocation());
    }

    /** A fact a line. */
    public List<String> lines() {
        return List.of(
                "taken at the same time: " + Counts.grouped(stays.load()) + " at most",
                "wanted where each keeps its place: " + Counts.grouped(allocation.places())
                        + (allocation.isProven()
                                ? ", and it cannot be less"
                                : ", at least " + Counts.grouped(allocation.atLeast())));
    }
}
