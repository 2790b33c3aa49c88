// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.List;
import java.util.Optional;

/**
 * One factor, worked out.
 *
 * @param sd of its levels
 * @param differences of every two levels, the one that occurs first being {@code a}
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
        return differences.stream()
                .filter(each -> each.a().equals(a) && each.b().equals(b))
                .findFirst()
                .or(() -> differences.stream()
                        .filter(each -> each.a().equals(b) && each.b().equals(a))
                        .findFirst()
                        .map(Difference::turned));
    }
}
