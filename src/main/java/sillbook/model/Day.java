// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.Comparator;

/** The day something happened: known, or about so. */
public record Day(LocalDate earliest, LocalDate likely, LocalDate latest) implements Comparable<Day> {
    private static final Comparator<Day> ORDER =
            Comparator.comparing(Day::likely).thenComparing(Day::earliest).thenComparing(Day::latest);

    public Day {
        if (earliest.isAfter(likely) || likely.isAfter(latest)) {
            throw new IllegalArgumentException("not in order: " + earliest + ", " + likely + ", " + latest);
        }
    }

    public static Day on(LocalDate day) {
        return new Day(day, day, day);
    }

    /** A day not quite remembered, give or take so many days. */
    public static Day about(LocalDate likely, int giveOrTake) {
        return new Day(likely.minusDays(giveOrTake), likely, likely.plusDays(giveOrTake));
    }

    public boolean isExact() {
        return earliest.equals(latest);
    }

    /** By the likely day, then by how early and how late it can have been. */
    @Override
    public int compareTo(Day other) {
        return ORDER.compare(this, other);
    }
}
