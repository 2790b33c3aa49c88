// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Ways that are chosen together beside the fixed pots, and what they come to. */
record Choice(Ways ways, List<Way> chosen) {
    Choice {
        chosen = chosen.stream().sorted(Comparator.comparingInt(Way::pull)).toList();
    }

    Evaluation evaluation() {
        return Evaluation.of(ways.task(), pulls());
    }

    /** Says it in the groups of the task. */
    List<Pull> pulls() {
        int[] taken = new int[ways.kinds().size()];
        List<Pull> pulls = new ArrayList<>(ways.fixed());
        for (Way way : chosen) {
            int pot = taken[way.kind()]++;
            pulls.add(way.of(ways.kinds().get(way.kind()).groups().get(pot)));
        }
        pulls.sort(Comparator.comparingInt(Pull::group).thenComparingInt(Pull::day));
        return pulls;
    }
}
