// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * One factor, worked out.
 *
 * @param sd of its levels
 * @param differences of every two levels, {@code a} being the one that occurs first; in the order of {@code a}, then of
 *     {@code b}
 */
public record FactorEffects(String name, double sd, List<LevelEffect> levels, List<Difference> differences) {
    public FactorEffects {
        levels = List.copyOf(levels);
        differences = List.copyOf(differences);
    }

    public Optional<LevelEffect> level(String level) {
        return levels.stream().filter(effect -> effect.level().equals(level)).findFirst();
    }

    /** Either way round; empty for a level that is not there, or for one and the same. */
    public Optional<Difference> difference(String a, String b) {
        int first = place(a);
        int second = place(b);
        if (first < 0 || second < 0 || first == second) {
            return Optional.empty();
        }
        return Optional.of(
                first < second ? between(first, second) : between(second, first).turned());
    }

    private int place(String level) {
        return IntStream.range(0, levels.size())
                .filter(i -> levels.get(i).level().equals(level))
                .findFirst()
                .orElse(-1);
    }

    /** After those of the levels before the first, which are one fewer each time. */
    private Difference between(int first, int second) {
        int before = first * (2 * levels.size() - first - 1) / 2;
        return differences.get(before + second - first - 1);
    }
}
