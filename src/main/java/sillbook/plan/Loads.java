// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal.Course;
import sillbook.reckon.dates.DaySpan;

/** How many pots stand at each place on each day. */
final class Loads {
    private final Map<Id<Place>, Map<LocalDate, Integer>> pots = new HashMap<>();

    private void stand(Id<Place> place, DaySpan days) {
        Map<LocalDate, Integer> there = pots.computeIfAbsent(place, fresh -> new HashMap<>());
        days.start().datesUntil(days.endExclusive()).forEach(day -> there.merge(day, 1, Integer::sum));
    }

    /** A pot that goes a course, until the day after its last where it flowers. */
    void stand(Course course, LocalDate gone) {
        course.cold().ifPresent(place -> stand(place, DaySpan.of(course.potting(), course.in())));
        course.room().ifPresent(place -> stand(place, DaySpan.of(course.in(), gone)));
    }

    int on(Id<Place> place, LocalDate day) {
        return pots.getOrDefault(place, Map.of()).getOrDefault(day, 0);
    }

    /** Whether one pot more finds room on all days. */
    boolean hasRoom(Berth berth, DaySpan days) {
        return berth.room()
                .map(room -> days.start().datesUntil(days.endExclusive()).allMatch(day -> on(berth.id(), day) < room))
                .orElse(true);
    }

    /** The first of some places with room on all days; else the first of them. */
    Optional<Berth> firstWithRoom(List<Berth> berths, DaySpan days) {
        return berths.stream()
                .filter(berth -> hasRoom(berth, days))
                .findFirst()
                .or(() -> berths.stream().findFirst());
    }

    /** The days on which more stand at a place than find room, as spans. */
    List<DaySpan> crowded(Berth berth) {
        return berth.room()
                .map(room -> DaySpan.joined(pots.getOrDefault(berth.id(), Map.of()).entrySet().stream()
                        .filter(day -> day.getValue() > room)
                        .map(day -> DaySpan.ofInclusive(day.getKey(), day.getKey()))
                        .collect(Collectors.toList())))
                .orElse(List.of());
    }
}
