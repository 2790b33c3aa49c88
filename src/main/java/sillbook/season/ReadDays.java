// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.SpanReading;
import sillbook.reckon.dates.DaySpan;

/**
 * What is known of the days of a place, up to a day: the sum of a day's readings, else the lowest and highest of a span that it lies in. Of
 * spans that overlap the one that began first holds for what both cover.
 */
final class ReadDays {
    private static final double HOURS_IN_DAY = 24;
    private static final double MINUTES_IN_HOUR = 60;

    static final ReadDays NONE =
            new ReadDays(Collections.emptyNavigableMap(), List.of(), LocalDate.MIN, ZoneOffset.UTC);

    private final NavigableMap<LocalDate, DayRead> sums;
    private final DaySpan counted;
    private final ZoneId zone;
    private final NavigableMap<LocalDate, Spanned> spans = new TreeMap<>();

    private ReadDays(NavigableMap<LocalDate, DayRead> sums, List<SpanReading> read, LocalDate today, ZoneId zone) {
        this.zone = zone;
        boolean isAll = sums.isEmpty() || !sums.lastKey().isAfter(today);
        this.sums = isAll ? sums : sums.headMap(today.plusDays(1), false);
        this.counted = DaySpan.ofInclusive(LocalDate.MIN, today);
        LocalDate covered = LocalDate.MIN;
        for (SpanReading reading : read) {
            LocalDate from = reading.from().likely();
            LocalDate open = from.isBefore(covered) ? covered : from;
            LocalDate to = reading.to().likely();
            if (open.isBefore(to)) {
                spans.put(open, new Spanned(DaySpan.of(open, to), reading.between()));
                covered = to;
            }
        }
    }

    /** Days of which only the lowest and highest are known: from the day of the reset up to, not with, that of the reading. */
    record Spanned(DaySpan days, Band between) {}

    static ReadDays of(Journal journal, Id<Place> place, LocalDate today) {
        NavigableMap<LocalDate, DayRead> sums = journal.daysRead().at(place);
        List<SpanReading> read = journal.spanReadingsAt(place).stream()
                .filter(reading -> !reading.to().likely().isAfter(today))
                .toList();
        return sums.isEmpty() && read.isEmpty()
                ? NONE
                : new ReadDays(sums, read, today, journal.settings().zone());
    }

    boolean isEmpty() {
        return sums.isEmpty() && spans.isEmpty();
    }

    /** How long a day is: other than 24 hours where the clocks change. */
    double hours(LocalDate day) {
        LocalDate next = day.plusDays(1);
        // Asked of every day that is counted; moments are made only of the few on which the clocks change.
        return offset(day).equals(offset(next))
                ? HOURS_IN_DAY
                : Duration.between(day.atStartOfDay(zone), next.atStartOfDay(zone))
                                .toMinutes()
                        / MINUTES_IN_HOUR;
    }

    private ZoneOffset offset(LocalDate day) {
        return zone.getRules().getOffset(day.atStartOfDay());
    }

    Optional<DayRead> sum(LocalDate day) {
        return Optional.ofNullable(sums.get(day));
    }

    /** The span that a day lies in, of whose readings there is no sum. */
    Optional<Spanned> span(LocalDate day) {
        return Optional.ofNullable(spans.floorEntry(day))
                .map(Map.Entry::getValue)
                .filter(span -> span.days().contains(day) && !sums.containsKey(day));
    }

    /** The lowest and highest of a day, or of the span it lies in. */
    Optional<Band> between(LocalDate day) {
        return sum(day).map(DayRead::between).or(() -> span(day).map(Spanned::between));
    }

    boolean isKnown(LocalDate day) {
        return sums.containsKey(day) || span(day).isPresent();
    }

    /** Hours that are known of a day; all of one that lies in a span. */
    double known(LocalDate day) {
        return sum(day).map(DayRead::known).orElseGet(() -> span(day).isPresent() ? hours(day) : 0);
    }

    /** The sums of some days. */
    NavigableMap<LocalDate, DayRead> sums(DaySpan days) {
        return days.intersection(counted)
                .map(known -> sums.subMap(known.start(), true, known.endExclusive(), false))
                .orElseGet(Collections::emptyNavigableMap);
    }

    /** The spans that were read on one of some days. */
    Stream<Spanned> spansReadIn(DaySpan days) {
        return spans.values().stream().filter(span -> days.contains(span.days().endExclusive()));
    }

    /** The spans with a day among some days of whose readings there is no sum. */
    Stream<Spanned> spansIn(DaySpan days) {
        return spans.values().stream()
                .filter(span -> span.days().intersection(days).stream()
                        .flatMap(common -> common.start().datesUntil(common.endExclusive()))
                        .anyMatch(day -> !sums.containsKey(day)));
    }

    /** From the first to the last of some days of which anything is known; empty where nothing is. */
    Optional<DaySpan> known(DaySpan days) {
        return firstFrom(days.start())
                .filter(days::contains)
                .map(first -> DaySpan.ofInclusive(first, lastBefore(days.endExclusive())));
    }

    private LocalDate lastBefore(LocalDate day) {
        LocalDate last = day.minusDays(1);
        while (!isKnown(last)) {
            last = last.minusDays(1);
        }
        return last;
    }

    /** The first day anything is known of, on that day or after. */
    Optional<LocalDate> firstFrom(LocalDate day) {
        Optional<LocalDate> summed = Optional.ofNullable(sums.ceilingKey(day));
        Optional<LocalDate> spanned = spans.values().stream()
                .filter(span -> span.days().endExclusive().isAfter(day))
                .findFirst()
                .map(span ->
                        span.days().start().isBefore(day) ? day : span.days().start());
        return Stream.concat(summed.stream(), spanned.stream()).min(Comparator.naturalOrder());
    }

    /** The last day anything is known of. */
    Optional<LocalDate> last() {
        Optional<LocalDate> summed = sums.isEmpty() ? Optional.empty() : Optional.of(sums.lastKey());
        Optional<LocalDate> spanned = spans.isEmpty()
                ? Optional.empty()
                : Optional.of(spans.lastEntry().getValue().days().last());
        return Stream.concat(summed.stream(), spanned.stream()).max(Comparator.naturalOrder());
    }
}
