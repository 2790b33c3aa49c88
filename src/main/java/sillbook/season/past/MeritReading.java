// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import sillbook.reckon.effects.Difference;
import sillbook.reckon.effects.Effects;
import sillbook.reckon.effects.FactorEffects;
import sillbook.reckon.effects.LevelEffect;

/** Reads how the influences of a trait stand. */
final class MeritReading {
    private static final double SURE = 0.9;
    private static final Comparator<Merit> ORDER = Comparator.<Merit>comparingInt(
                    merit -> merit.level().isPresent() ? 0 : merit.scores() > 0 ? 1 : 2)
            .thenComparingDouble(merit -> -merit.level()
                    .map(level -> level.score().value())
                    .orElse(merit.plainMean().orElse(0)));

    private final Trials trials;
    private final Trait trait;
    private final Optional<Effects> effects;
    private final Optional<FactorEffects> factor;
    private final Map<Influence, List<Grown>> grown;
    private final TieReading ties;
    private final Map<Influence, Merit.Level> levels;

    MeritReading(Trials trials, Trait trait, Optional<Effects> effects) {
        this.trials = trials;
        this.trait = trait;
        this.effects = effects;
        this.factor = effects.map(known -> known.factor(trait.name()));
        this.grown = trials.byInfluence(trait);
        this.ties = new TieReading(trials, trait);
        this.levels = levels();
    }

    Merits merits() {
        return new Merits(
                trait,
                grown.keySet().stream()
                        .filter(Influence::isKnown)
                        .map(this::merit)
                        .sorted(ORDER)
                        .toList(),
                ties.ties(),
                bestPlace(),
                effects.map(Effects::effectiveSize).orElse(OptionalDouble.empty()));
    }

    private Merit merit(Influence influence) {
        List<Grown> with = grown.getOrDefault(influence, List.of());
        Optional<Merit.Level> level = Optional.ofNullable(levels.get(influence));
        return new Merit(influence, with, level, level.isPresent() ? notToldFrom(influence) : List.of(), onlyAt(with));
    }

    /** Of those that are known and can be told, in the order they first occur. */
    private Map<Influence, Merit.Level> levels() {
        Map<Influence, Merit.Level> levels = new LinkedHashMap<>();
        grown.keySet().stream()
                .filter(influence -> influence.isKnown() && !ties.isWithheld(influence))
                .forEach(influence -> factor.flatMap(known -> known.level(trials.name(influence)))
                        .ifPresent(level -> levels.put(influence, new Merit.Level(level.score(), level.eighty()))));
        return levels;
    }

    private List<Influence> notToldFrom(Influence influence) {
        Map<Influence, Double> apart = new LinkedHashMap<>();
        for (Influence other : levels.keySet()) {
            difference(influence, other)
                    .filter(found -> Math.max(found.better(), 1 - found.better()) < SURE)
                    .ifPresent(found -> apart.put(other, Math.abs(found.value())));
        }
        return apart.entrySet().stream()
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    private Optional<Difference> difference(Influence one, Influence other) {
        return factor.flatMap(known -> known.difference(trials.name(one), trials.name(other)));
    }

    private Optional<Influence> onlyAt(Collection<Grown> with) {
        List<Influence> places = with.stream()
                .filter(one -> one.score().isPresent())
                .map(one -> trials.influence(Trait.PLACE, one))
                .toList();
        Set<Influence> different = Set.copyOf(places);
        return trait != Trait.PLACE && places.size() > 1 && different.size() == 1
                ? different.stream().filter(Influence::isKnown).findFirst()
                : Optional.empty();
    }

    private Optional<Influence> bestPlace() {
        if (effects.isEmpty() || !trials.traits().contains(Trait.PLACE)) {
            return Optional.empty();
        }
        Map<String, Influence> places = trials.byInfluence(Trait.PLACE).keySet().stream()
                .filter(Influence::isKnown)
                .collect(Collectors.toMap(trials::name, place -> place));
        return effects.orElseThrow().factor(Trait.PLACE.name()).levels().stream()
                .filter(level -> places.containsKey(level.level()))
                .max(Comparator.comparingDouble(
                        (LevelEffect level) -> level.score().value()))
                .map(level -> places.get(level.level()));
    }
}
