// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.reckon.shelf.Headroom;
import sillbook.reckon.shelf.Shelf.Standing;

/**
 * How many pots stand on a shelf, in plain lines.
 *
 * @param pot across, in cm
 * @param headroom empty where the height over the shelf is not known
 */
public record ShelfFigures(Standing standing, double pot, Optional<Headroom> headroom) {

    /** How it is laid out. */
    public String pattern() {
        return standing.pattern()
                .map(pattern -> switch (pattern) {
                    case SQUARE -> "square";
                    case ROWS_ALONG_WIDTH -> "rows along the width";
                    case ROWS_ALONG_DEPTH -> "rows along the depth";
                })
                .orElse("irregular");
    }

    public List<Warned> warnings() {
        List<Warned> warnings = new ArrayList<>();
        if (standing.count() == 0) {
            warnings.add(new Warned(
                    "too-wide", "A pot of " + FitFigures.cm(pot) + " is wider than the shelf. Measure both again."));
        }
        headroom.filter(room -> !room.isEnough())
                .ifPresent(room -> warnings.add(new Warned(
                        "too-low",
                        "Pot and shoot want " + FitFigures.cm(room.needed()) + ", and there are "
                                + FitFigures.cm(room.clear()) + " over the shelf: none stands upright.")));
        return warnings;
    }

    /** A fact a line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        String most = standing.isProven()
                ? "no more can stand there"
                : "more than " + Counts.grouped(standing.atMost()) + " cannot";
        lines.add(Counts.of(standing.count(), "pot") + " of " + FitFigures.cm(pot) + " across; " + most);
        if (standing.count() > 0) {
            lines.add("set: " + pattern() + (standing.pattern().isEmpty() ? ", found by a search" : ""));
        }
        headroom.filter(Headroom::isEnough)
                .ifPresent(room -> lines.add("over pot and shoot are " + FitFigures.cm(room.left()) + " left"));
        if (standing.pattern().isEmpty()) {
            lines.add("where they stand, in cm from a corner, along the width and the depth:");
            FitFigures.placesSaid(standing.places()).stream().skip(1).forEach(lines::add);
        }
        return lines;
    }
}
