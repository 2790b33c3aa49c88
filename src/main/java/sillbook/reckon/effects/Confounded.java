// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.List;

/**
 * A factor whose levels fall into groups that nothing ties together: between two groups its differences and those of
 * other factors are one and the same evidence.
 *
 * @param groups of levels; within one, levels can be told apart
 * @param with the other factors that the differences between the groups could as well belong to
 */
public record Confounded(String factor, List<List<String>> groups, List<String> with) {
    public Confounded {
        groups = groups.stream().map(List::copyOf).toList();
        with = List.copyOf(with);
    }

    /** Whether the two stand in different groups. */
    public boolean parts(String a, String b) {
        return groups.stream().noneMatch(group -> group.contains(a) && group.contains(b));
    }
}
