// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.reckon.effects.Confounded;

/** Reads which influences of a trait nothing ties to the others, and what went with them. */
final class TieReading {
    private final Trials trials;
    private final Trait trait;
    private final Map<String, Influence> names = new HashMap<>();
    private final List<Tie> ties;
    private final Set<Influence> apart = new HashSet<>();
    private final boolean isAllApart;

    TieReading(Trials trials, Trait trait) {
        this.trials = trials;
        this.trait = trait;
        trials.byInfluence(trait).keySet().forEach(influence -> names.put(trials.name(influence), influence));
        this.ties = trials.confounding().stream()
                .flatMap(found -> found.factors().stream())
                .filter(found -> found.factor().equals(trait.name()))
                .flatMap(this::read)
                .toList();
        ties.forEach(tie -> apart.addAll(tie.these()));
        this.isAllApart = !apart.isEmpty() && scored() == apart.size() + 1;
    }

    List<Tie> ties() {
        return ties;
    }

    /** Whether it stands apart from those it would be compared with. */
    boolean isWithheld(Influence influence) {
        return apart.contains(influence) || isAllApart;
    }

    private long scored() {
        return trials.scored().stream()
                .map(one -> trials.influence(trait, one))
                .filter(Influence::isKnown)
                .distinct()
                .count();
    }

    /** All groups but the one with the most pots, which the others are held against. */
    private Stream<Tie> read(Confounded found) {
        List<String> main = found.groups().stream()
                .max(Comparator.comparingInt(group -> pots(group).size()))
                .orElseThrow();
        return found.groups().stream()
                .filter(group -> !group.equals(main))
                .flatMap(group -> tie(found, group).stream());
    }

    /** Empty where all that went with it was never written, as of pots that need no cold: that is no rival. */
    private Optional<Tie> tie(Confounded found, List<String> group) {
        List<Influence> these = group.stream()
                .flatMap(name -> Optional.ofNullable(names.get(name)).stream())
                .filter(Influence::isKnown)
                .toList();
        List<Influence> with = found.with().stream()
                .flatMap(other -> onlyWith(Trait.valueOf(other), group).stream())
                .toList();
        return these.isEmpty() || with.isEmpty()
                ? Optional.empty()
                : Optional.of(new Tie(trait, these, pots(group).size(), with));
    }

    private List<Grown> pots(List<String> group) {
        return trials.scored().stream().filter(one -> isIn(group, one)).toList();
    }

    private boolean isIn(List<String> group, Grown one) {
        return group.contains(trials.name(trials.influence(trait, one)));
    }

    /** What of another trait only these pots had. */
    private Set<Influence> onlyWith(Trait other, List<String> group) {
        Set<Influence> elsewhere = influences(other, trials.scored().stream().filter(one -> !isIn(group, one)));
        return influences(other, pots(group).stream()).stream()
                .filter(influence -> influence.isKnown() && !elsewhere.contains(influence))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Set<Influence> influences(Trait of, Stream<Grown> pots) {
        return pots.map(one -> trials.influence(of, one)).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
