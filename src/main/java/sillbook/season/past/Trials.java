// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.reckon.effects.Averaging;
import sillbook.reckon.effects.Confounding;
import sillbook.reckon.effects.Design;
import sillbook.reckon.effects.Effects;
import sillbook.reckon.effects.Nested;
import sillbook.reckon.effects.Observation;
import sillbook.reckon.effects.Prior;
import sillbook.reckon.effects.Reml;

/**
 * The scored pots as an experiment: who grew in what, stood where, in which winter, and how it did. What they all have
 * in common tells nothing and is left aside.
 */
public final class Trials {
    private static final int FEWEST = 3;
    /** The work grows with the third power of it. */
    private static final int MOST_INFLUENCES = 400;

    private final Map<Influence, String> names = new ConcurrentHashMap<>();
    private final Journal journal;
    private final List<Grown> grown;
    private final List<Grown> scored;
    private final List<Trait> traits;
    private final Optional<Design> design;
    private final Optional<Confounding> confounding;

    private Trials(Collection<Grown> grown, Journal journal) {
        this.journal = journal;
        this.grown = List.copyOf(grown);
        this.scored = this.grown.stream().filter(one -> one.score().isPresent()).toList();
        this.traits = Stream.of(Trait.values())
                .filter(trait -> influences(trait).size() > 1)
                .toList();
        this.design = silence().isEmpty() ? Optional.of(design()) : Optional.empty();
        this.confounding = design.map(Confounding::of);
    }

    public static Trials of(Winters winters, Journal journal) {
        return new Trials(winters.all(), journal);
    }

    /** Why nothing can be worked out. */
    public enum Silence {
        NO_SCORE,
        TOO_FEW,
        ALL_ALIKE,
        ALL_EQUAL,
        TOO_MANY
    }

    /** Empty when something can be. */
    public Optional<Silence> silence() {
        if (scored.isEmpty()) {
            return Optional.of(Silence.NO_SCORE);
        }
        if (scored.size() < FEWEST) {
            return Optional.of(Silence.TOO_FEW);
        }
        if (scored.stream().map(Grown::score).distinct().count() == 1) {
            return Optional.of(Silence.ALL_EQUAL);
        }
        if (traits.stream().allMatch(Trait.WINTER::equals)) {
            return Optional.of(Silence.ALL_ALIKE);
        }
        int all = traits.stream().mapToInt(trait -> influences(trait).size()).sum();
        return all > MOST_INFLUENCES ? Optional.of(Silence.TOO_MANY) : Optional.empty();
    }

    private Design design() {
        List<Nested> nested = traits.contains(Trait.KIND) && traits.contains(Trait.VARIETY)
                ? List.of(new Nested(Trait.VARIETY.name(), Trait.KIND.name()))
                : List.of();
        return Design.of(
                traits.stream().map(Trait::name).toList(),
                scored.stream().map(this::observation).toList(),
                nested);
    }

    private Observation observation(Grown one) {
        return Observation.of(
                one.score().orElseThrow(),
                traits.stream().map(trait -> name(trait.of(one, journal))).toList());
    }

    /** What the sums call it; made once for each, not for each of its pots. */
    String name(Influence influence) {
        return names.computeIfAbsent(influence, Object::toString);
    }

    /** All that was grown with each of a trait's influences, scored or not, in the order they first occur. */
    Map<Influence, List<Grown>> byInfluence(Trait trait) {
        Map<Influence, List<Grown>> by = new LinkedHashMap<>();
        grown.forEach(one -> by.computeIfAbsent(trait.of(one, journal), none -> new ArrayList<>())
                .add(one));
        return by;
    }

    private List<Influence> influences(Trait trait) {
        return scored.stream().map(one -> trait.of(one, journal)).distinct().toList();
    }

    /** The one a pot has of a trait. */
    Influence influence(Trait trait, Grown one) {
        return trait.of(one, journal);
    }

    public List<Grown> scored() {
        return scored;
    }

    /** Those in which the scored pots differ. */
    public List<Trait> traits() {
        return traits;
    }

    /** How many winters the scored pots are of. */
    public int winters() {
        return (int) scored.stream().map(Grown::winter).distinct().count();
    }

    /** What cannot be told apart; empty when nothing can be worked out at all. */
    public Optional<Confounding> confounding() {
        return confounding;
    }

    /** The quick answer; empty also where it would be too sure of itself to be one. */
    public Optional<Effects> quick() {
        return design.flatMap(Reml::fit);
    }

    /** The answer that stays: averaged over how far things may scatter. */
    public Optional<Effects> averaged() {
        return design.flatMap(known -> Averaging.over(known, Prior.WHOLE_SCORES));
    }

    /** How the influences of a trait stand, by these effects; with none, in plain counts only. */
    public Merits merits(Trait trait, Optional<Effects> effects) {
        return new MeritReading(this, trait, effects.filter(any -> traits.contains(trait))).merits();
    }
}
