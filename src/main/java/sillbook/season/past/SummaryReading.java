// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Failure;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Pot.Planting;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.reckon.effects.Proportion;
import sillbook.season.past.Summary.Cold;

/** Sums up what was grown in one winter. */
record SummaryReading(Journal journal, Season winter, List<Grown> grown) {

    Summary summary() {
        Map<Id<Variety>, Double> means = means();
        return new Summary(
                winter,
                pots(grown.stream()),
                pots(grown.stream().filter(Grown::hasFlowered)),
                Tally.of(grown),
                bulbs(),
                daysWithBloom(),
                at(means, means.values().stream().max(Double::compare)),
                at(means, means.values().stream().min(Double::compare)),
                counts(failure -> failure.signs().stream()),
                counts(failure -> failure.cause().stream()),
                cold());
    }

    private static int pots(Stream<Grown> of) {
        return (int) of.map(one -> one.pot().id()).distinct().count();
    }

    /** Each once, with one of those it speaks of: the outcome of a mixed pot as a whole is that of all in it. */
    private Map<Outcome, Grown> outcomes() {
        Map<Outcome, Grown> outcomes = new LinkedHashMap<>();
        grown.forEach(one -> one.outcome().ifPresent(outcome -> outcomes.putIfAbsent(outcome, one)));
        return outcomes;
    }

    private Proportion bulbs() {
        return outcomes().entrySet().stream()
                .flatMap(one -> one.getKey().flowers().stream().map(flowers -> {
                    int planted = planted(one.getKey(), one.getValue());
                    return new Proportion(Math.min(flowers, planted), planted);
                }))
                .reduce(new Proportion(0, 0), Proportion::plus);
    }

    private static int planted(Outcome outcome, Grown one) {
        return outcome.variety().isPresent()
                ? one.planting().count()
                : one.pot().plantings().stream().mapToInt(Planting::count).sum();
    }

    /** Whoever never wrote that a bloom was over had it till the end of the winter at most. */
    private Optional<Long> daysWithBloom() {
        long days = grown.stream()
                .flatMap(one -> one.inBloom().stream())
                .distinct()
                .flatMap(span -> span.start().datesUntil(span.endExclusive()))
                .distinct()
                .filter(day -> journal.seasonOf(day).equals(winter))
                .count();
        return Optional.of(days).filter(some -> some > 0);
    }

    private Map<Id<Variety>, Double> means() {
        return grown.stream()
                .filter(one -> one.score().isPresent())
                .collect(Collectors.groupingBy(
                        one -> one.planting().variety(),
                        LinkedHashMap::new,
                        Collectors.averagingInt(one -> one.score().orElseThrow())));
    }

    private static List<Id<Variety>> at(Map<Id<Variety>, Double> means, Optional<Double> mean) {
        if (means.values().stream().distinct().count() < 2) {
            return List.of();
        }
        return means.entrySet().stream()
                .filter(one -> Optional.of(one.getValue()).equals(mean))
                .map(Map.Entry::getKey)
                .toList();
    }

    private <T extends Comparable<T>> Map<T, Integer> counts(Function<Failure, Stream<T>> what) {
        Collection<Outcome> all = outcomes().keySet();
        return all.stream()
                .flatMap(outcome -> what.apply(outcome.failure()))
                .collect(Collectors.toMap(one -> one, one -> 1, Integer::sum, TreeMap::new));
    }

    private Optional<Cold> cold() {
        List<Long> days = grown.stream()
                .map(Grown::daysOfCold)
                .filter(some -> some > 0)
                .sorted()
                .toList();
        return days.isEmpty()
                ? Optional.empty()
                : Optional.of(new Cold(days.get(0), days.get(days.size() / 2), days.get(days.size() - 1)));
    }
}
