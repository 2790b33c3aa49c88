// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/**
 * So many pots should be in bloom on a day.
 *
 * @param day of the season
 * @param count of pots, at least 1
 * @param groups of which they may be, by their number from 0 in the {@link Task}; any where none is named
 * @param sites where they should stand, by their number from 0; anywhere where none is named
 */
public record DayWish(int day, int count, List<Integer> groups, List<Integer> sites) {
    public DayWish {
        Limits.day("day of a wish", day);
        Limits.within("number of pots wished for", count, 1, Task.MOST_POTS);
        groups = groups.stream().distinct().sorted().toList();
        sites = sites.stream().distinct().sorted().toList();
    }

    /** Wherever they stand. */
    public DayWish(int day, int count, List<Integer> groups) {
        this(day, count, groups, List.of());
    }

    DayWish withCount(int pots) {
        return new DayWish(day, pots, groups, sites);
    }

    boolean asksFor(int group) {
        return groups.isEmpty() || groups.contains(group);
    }

    boolean isAt(int site) {
        return sites.isEmpty() || sites.contains(site);
    }
}
