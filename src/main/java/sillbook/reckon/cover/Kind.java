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

    static List<Kind> of(Task task) {
        Map<List<Object>, List<Integer>> alike = new LinkedHashMap<>();
        for (int group = 0; group < task.pots().size(); group++) {
            PotGroup pots = task.pots().get(group);
            List<Integer> wishes = wishesFor(group, task);
            List<Integer> members =
                    alike.computeIfAbsent(List.of(pots.withCount(1), wishes), fresh -> new ArrayList<>());
            for (int pot = 0; pot < pots.count(); pot++) {
                members.add(group);
            }
        }
        return alike.values().stream()
                .map(members -> new Kind(task.pots().get(members.get(0)), members))
                .toList();
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
