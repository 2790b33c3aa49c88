// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Groups that are alike in everything, wishes too, taken for one: which of their pots comes in makes no difference.
 *
 * @param groups by their number, one entry for each pot, in order
 */
record Kind(PotGroup pots, List<Integer> groups) {
    Kind {
        groups = List.copyOf(groups);
    }

    int count() {
        return groups.size();
    }

    /** Of the pots that are not fixed. */
    static List<Kind> of(Task task, List<Pull> fixed) {
        Map<List<Object>, List<Integer>> alike = new LinkedHashMap<>();
        for (int group = 0; group < task.pots().size(); group++) {
            PotGroup pots = task.pots().get(group);
            List<Integer> wishes = wishesFor(group, task);
            List<Integer> members =
                    alike.computeIfAbsent(List.of(pots.withCount(1), wishes), fresh -> new ArrayList<>());
            for (int pot = left(group, task, fixed); pot > 0; pot--) {
                members.add(group);
            }
        }
        return alike.values().stream()
                .filter(members -> !members.isEmpty())
                .map(members -> new Kind(task.pots().get(members.get(0)), members))
                .toList();
    }

    private static int left(int group, Task task, List<Pull> fixed) {
        int pots = task.pots().get(group).count();
        int taken = (int) fixed.stream().filter(pull -> pull.group() == group).count();
        if (taken > pots) {
            throw new Unreckonable(
                    taken + " of pot " + (group + 1) + " are fixed; there " + (pots == 1 ? "is " : "are ") + pots);
        }
        return pots - taken;
    }

    private static List<Integer> wishesFor(int group, Task task) {
        List<Integer> wishes = new ArrayList<>();
        for (int wish = 0; wish < task.wishes().size(); wish++) {
            if (task.wishes().get(wish).asksFor(group)) {
                wishes.add(wish);
            }
        }
        return wishes;
    }
}
