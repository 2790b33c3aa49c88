// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.past.Summary.Cold;

/** Sums up what was grown in one winter. */
record SummaryReading(Journal journal, Season winter, List<Grown> grown) {

    Summary summary() {
        Map<Id<Variety>, Double> means = means();
        Outcomes outcomes = Outcomes.of(grown);
        return new Summary(
                winter,
                pots(grown.stream()),
                pots(grown.stream().filter(Grown::hasFlowered)),
                Tally.of(grown),
                outcomes.flowered(),
                daysWithBloom(),
                at(means, means.values().stream().max(Double::compare)),
                at(means, means.values().stream().min(Double::compare)),
                outcomes.counts(failure -> failure.signs().stream()),
                outcomes.counts(failure -> failure.cause().stream()),
                cold());
    }

    private static int pots(Stream<Grown> of) {
        return (int) of.map(one -> one.pot().id()).distinct().count();
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
