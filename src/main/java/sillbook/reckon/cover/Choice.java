// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Ways that are chosen together, and what they come to. */
record Choice(Ways ways, List<Way> chosen) {
    Choice {
        chosen = chosen.stream().sorted(Comparator.comparingInt(Way::pull)).toList();
    }

    Tally tally() {
        int[] blooms = blooms();
        int gapDays = 0;
        int overlap = 0;
        for (int pots : blooms) {
            gapDays += pots == 0 ? 1 : 0;
            overlap += Math.max(0, pots - 1);
        }
        int unmet = IntStream.range(0, ways.wishes().size()).map(this::lacks).sum();
        return new Tally(unmet, gapDays, chosen.size(), overlap);
    }

    private int lacks(int wish) {
        long met = chosen.stream().filter(way -> ways.serves(way, wish)).count();
        return (int) Math.max(0, ways.wishes().get(wish).count() - met);
    }

    int longestGap() {
        int longest = 0;
        int gap = 0;
        for (int pots : blooms()) {
            gap = pots == 0 ? gap + 1 : 0;
            longest = Math.max(longest, gap);
        }
        return longest;
    }

    /** How many pots are in bloom on each day of the season. */
    private int[] blooms() {
        int[] blooms = new int[ways.season().days()];
        for (Way way : chosen) {
            for (int day = way.first(); day <= way.last(); day++) {
                blooms[day - ways.season().first()]++;
            }
        }
        return blooms;
    }

    /** Says it in the groups of the task. */
    List<Pull> pulls() {
        int[] taken = new int[ways.kinds().size()];
        List<Pull> pulls = new ArrayList<>();
        for (Way way : chosen) {
            int pot = taken[way.kind()]++;
            pulls.add(way.of(ways.kinds().get(way.kind()).groups().get(pot)));
        }
        pulls.sort(Comparator.comparingInt(Pull::group).thenComparingInt(Pull::day));
        return pulls;
    }
}
