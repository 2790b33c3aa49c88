// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Failure;
import sillbook.model.Failure.Sign;
import sillbook.model.Outcome;
import sillbook.model.Pot.Planting;
import sillbook.reckon.effects.Proportion;

/**
 * What was written of how some of what was grown did, each outcome once: that of a mixed pot as a whole is that of all in it.
 *
 * @param each with those it speaks of
 */
record Outcomes(Map<Outcome, List<Grown>> each) {
    Outcomes {
        each = Collections.unmodifiableMap(new LinkedHashMap<>(each));
    }

    static Outcomes of(Collection<Grown> grown) {
        Map<Outcome, List<Grown>> each = new LinkedHashMap<>();
        grown.forEach(one -> one.outcome()
                .ifPresent(outcome ->
                        each.computeIfAbsent(outcome, none -> new ArrayList<>()).add(one)));
        return new Outcomes(each);
    }

    /**
     * Bulbs that flowered of those planted, where flowers were counted. The flowers of a mixed pot counted as a whole are left
     * out unless all its varieties are meant: nobody knows whose they were.
     */
    Proportion flowered() {
        return each.entrySet().stream()
                .flatMap(one -> one.getKey().flowers().stream()
                        .filter(flowers -> isOfAll(one.getKey(), one.getValue()))
                        .map(flowers -> share(flowers, planted(one.getValue()))))
                .reduce(new Proportion(0, 0), Proportion::plus);
    }

    private static boolean isOfAll(Outcome outcome, List<Grown> spokenOf) {
        return outcome.variety().isPresent()
                || planted(spokenOf) == spokenOf.get(0).pot().bulbs();
    }

    private static int planted(List<Grown> spokenOf) {
        return spokenOf.stream().map(Grown::planting).mapToInt(Planting::count).sum();
    }

    private static Proportion share(int flowers, int planted) {
        return new Proportion(Math.min(flowers, planted), planted);
    }

    /** Those outcomes that have a sign of failure, of all; the signs in their order, only those that were seen. */
    Map<Sign, Proportion> signs() {
        return counts(failure -> failure.signs().stream()).entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        seen -> new Proportion(seen.getValue(), each.size()),
                        Proportion::plus,
                        TreeMap::new));
    }

    /** How many outcomes have each thing of their failures. */
    <T extends Comparable<T>> Map<T, Integer> counts(Function<Failure, Stream<T>> what) {
        Set<Outcome> all = each.keySet();
        return all.stream()
                .flatMap(outcome -> what.apply(outcome.failure()))
                .collect(Collectors.toMap(one -> one, one -> 1, Integer::sum, TreeMap::new));
    }
}
