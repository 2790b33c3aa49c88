// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.SpanReading;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;

/**
 * What thermometers saw at a place while a pot stood there.
 *
 * @param days on all of which it stood there
 * @param between the lowest and highest of them
 * @param on the day that is named for them: that of the reading, or of several days the one that went furthest
 */
public record StoodThrough(Id<Place> place, DaySpan days, Band between, LocalDate on) {

    /** Lowest and highest all of whose span, and days of readings on which from midnight on, a pot stood there; by the day they are named by. */
    static List<StoodThrough> of(Journal journal, Collection<Phase> phases) {
        return phases.stream()
                .flatMap(phase -> phase.place().stream()
                        .flatMap(place ->
                                Stream.concat(spans(journal, place, phase.days()), days(journal, place, phase.days()))))
                .sorted(Comparator.comparing(StoodThrough::on))
                .toList();
    }

    private static Stream<StoodThrough> spans(Journal journal, Id<Place> place, DaySpan stood) {
        return journal.spanReadingsAt(place).stream()
                .filter(reading -> stood.contains(reading.from().likely())
                        && !reading.to().likely().isAfter(stood.endExclusive()))
                .map(StoodThrough::span);
    }

    private static StoodThrough span(SpanReading reading) {
        LocalDate to = reading.to().likely();
        return new StoodThrough(
                reading.place(), DaySpan.ofInclusive(reading.from().likely(), to), reading.between(), to);
    }

    private static Stream<StoodThrough> days(Journal journal, Id<Place> place, DaySpan stood) {
        return journal.daysRead().at(place).subMap(stood.start(), false, stood.endExclusive(), false).values().stream()
                .map(StoodThrough::day);
    }

    private static StoodThrough day(DayRead day) {
        return new StoodThrough(day.place(), DaySpan.ofInclusive(day.day(), day.day()), day.between(), day.day());
    }

    /** Days that follow each other at one place are taken together. */
    static List<StoodThrough> joined(List<StoodThrough> some, boolean byLowest) {
        List<StoodThrough> joined = new ArrayList<>();
        for (StoodThrough one : some) {
            int last = joined.size() - 1;
            if (last >= 0 && one.follows(joined.get(last))) {
                joined.set(last, joined.get(last).and(one, byLowest));
            } else {
                joined.add(one);
            }
        }
        return joined;
    }

    private boolean follows(StoodThrough before) {
        return place.equals(before.place) && days.start().equals(before.days.endExclusive());
    }

    private StoodThrough and(StoodThrough next, boolean byLowest) {
        Temperature low = between.low().milli() <= next.between.low().milli() ? between.low() : next.between.low();
        Temperature high = between.high().milli() >= next.between.high().milli() ? between.high() : next.between.high();
        boolean isFurthest = byLowest
                ? low.milli() == between.low().milli()
                : high.milli() == between.high().milli();
        return new StoodThrough(
                place,
                DaySpan.of(days.start(), next.days.endExclusive()),
                new Band(low, high),
                isFurthest ? on : next.on);
    }
}
