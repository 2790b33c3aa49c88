// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Collection;
import java.util.Comparator;
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

    MeritReading(Trials trials, Trait trait, Optional<Effects> effects) {
        this.trials = trials;
        this.trait = trait;
        this.effects = effects;
        this.factor = effects.map(known -> known.factor(trait.name()));
        this.grown = trials.byInfluence(trait);
        this.ties = new TieReading(trials, trait);
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
        Optional<Merit.Level> level = level(influence);
        return new Merit(influence, with, level, level.isPresent() ? notToldFrom(influence) : List.of(), onlyAt(with));
    }

    private Optional<Merit.Level> level(Influence influence) {
        return ties.isWithheld(influence)
                ? Optional.empty()
                : factor.flatMap(known -> known.level(Trials.name(influence)))
                        .map(level -> new Merit.Level(level.score(), level.eighty()));
    }

    private List<Influence> notToldFrom(Influence influence) {
        return grown.keySet().stream()
                .filter(other -> other.isKnown() && level(other).isPresent())
                .filter(other -> difference(influence, other)
                        .filter(found -> Math.max(found.better(), 1 - found.better()) < SURE)
                        .isPresent())
                .sorted(Comparator.comparingDouble(other -> Math.abs(
                        difference(influence, other).map(Difference::value).orElse(0.0))))
                .toList();
    }

    private Optional<Difference> difference(Influence one, Influence other) {
        return factor.flatMap(known -> known.difference(Trials.name(one), Trials.name(other)));
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
                .collect(Collectors.toMap(Trials::name, place -> place));
        return effects.orElseThrow().factor(Trait.PLACE.name()).levels().stream()
                .filter(level -> places.containsKey(level.level()))
                .max(Comparator.comparingDouble(
                        (LevelEffect level) -> level.score().value()))
                .map(level -> places.get(level.level()));
    }
}
