// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.app.DayReckoning;
import sillbook.model.ChartColumn;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.model.SpotReading;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;

/** The readings of loggers in memory; what they come to is worked out from all of them whenever it is asked for. */
record MemoryReadings(Map<Id<Place>, NavigableMap<Long, Logged>> logged) {
    static final MemoryReadings NONE = new MemoryReadings(Map.of());

    private static final DaySums SUMS = new DayReckoning();

    /** What a delivery leads to. */
    record Intake(MemoryReadings after, Comparison comparison, Instant first, Instant last) {}

    Intake takeIn(Delivery delivery, boolean isTakenIn) {
        NavigableMap<Long, Logged> there = new TreeMap<>(logged.getOrDefault(delivery.place(), new TreeMap<>()));
        List<Comparison.Difference> differences = new ArrayList<>();
        int readings = 0;
        int known = 0;
        int repeated = 0;
        Set<Long> own = new HashSet<>();
        int suspicious = 0;
        long first = Long.MAX_VALUE;
        long last = Long.MIN_VALUE;
        for (Feed feed = delivery.feed(); feed.advance(); readings++) {
            Instant at = Instant.ofEpochSecond(feed.at());
            Logged next = new Logged(at, feed.milli(), feed.isSuspicious(), delivery.name(), feed.line());
            Logged before = there.get(feed.at());
            suspicious += next.isSuspicious() ? 1 : 0;
            first = Math.min(first, feed.at());
            last = Math.max(last, feed.at());
            boolean stands = before == null || STANDS.compare(before, next) < 0;
            if (before != null && before.milli() == next.milli()) {
                repeated += own.contains(feed.at()) ? 1 : 0;
                known += own.contains(feed.at()) ? 0 : 1;
            } else if (before != null) {
                differences.add(new Comparison.Difference(at, before.milli(), next.milli(), next.line(), stands));
            }
            if (stands) {
                there.put(feed.at(), next);
                own.add(feed.at());
            }
        }
        Map<Id<Place>, NavigableMap<Long, Logged>> after = new HashMap<>(logged);
        after.put(delivery.place(), there);
        int changed = (int)
                differences.stream().filter(Comparison.Difference::isChanged).count();
        Comparison comparison = new Comparison(
                readings,
                readings - known - repeated - differences.size(),
                known,
                repeated,
                differences.size(),
                changed,
                suspicious,
                isTakenIn,
                differences.stream().limit(Comparison.LISTED).toList());
        return new Intake(new MemoryReadings(after), comparison, second(first, readings), second(last, readings));
    }

    /** Those that this one brought are gone. */
    MemoryReadings without(ReadingSource source) {
        NavigableMap<Long, Logged> there = new TreeMap<>(logged.getOrDefault(source.place(), new TreeMap<>()));
        there.subMap(source.first().getEpochSecond(), true, source.last().getEpochSecond(), true)
                .values()
                .removeIf(reading -> reading.source().equals(source.name()));
        Map<Id<Place>, NavigableMap<Long, Logged>> after = new HashMap<>(logged);
        after.put(source.place(), there);
        return new MemoryReadings(after);
    }

    private static Instant second(long at, int readings) {
        return readings == 0 ? Instant.EPOCH : Instant.ofEpochSecond(at);
    }

    private static final Comparator<Logged> STANDS =
            Comparator.comparing(Logged::isSuspicious).reversed().thenComparingInt(Logged::milli);

    /** All readings of a place, in order. */
    List<Logged> of(Journal journal, Id<Place> place) {
        Stream<Logged> typed = journal.spotReadings().all().stream()
                .filter(spot -> spot.place().equals(place))
                .map(MemoryReadings::logged);
        Collection<Logged> all = logged.getOrDefault(place, new TreeMap<>()).values();
        return Stream.concat(all.stream(), typed)
                .sorted(Comparator.comparing(Logged::at))
                .toList();
    }

    private static Logged logged(SpotReading spot) {
        return new Logged(spot.at(), spot.temperature().milli(), false, "", 0);
    }

    private static DaySums.Basis basis(Journal journal, Id<Place> place) {
        return new DaySums.Basis(
                journal.settings().zone(),
                journal.places().get(place).bridges(),
                journal.thermometers().all().stream()
                        .filter(thermometer -> thermometer.place().equals(place))
                        .min(Comparator.comparing(Thermometer::id))
                        .map(Thermometer::correctionMilli)
                        .orElse(0));
    }

    private void tally(Journal journal, Id<Place> place, DaySums.Tally tally) {
        Map<Long, Double> moments = of(journal, place).stream()
                .filter(reading -> !reading.isSuspicious())
                .collect(Collectors.groupingBy(
                        reading -> reading.at().getEpochSecond(),
                        TreeMap::new,
                        Collectors.averagingInt(Logged::milli)));
        moments.forEach((at, milli) -> tally.read(at, (int) roundAway(milli)));
        tally.end();
    }

    /** Halves go away from 0, as SQLite has them. */
    private static double roundAway(double value) {
        return Math.copySign(Math.floor(Math.abs(value) + 0.5), value);
    }

    List<DayRead> days(Journal journal, Id<Place> place) {
        List<DayRead> days = new ArrayList<>();
        tally(journal, place, SUMS.days(place, basis(journal, place), days::add));
        return days;
    }

    DaysRead days(Journal journal) {
        List<DayRead> days = new ArrayList<>();
        List<LastRead> last = new ArrayList<>();
        for (Place place : journal.places().all()) {
            days.addAll(days(journal, place.id()));
            int correction = basis(journal, place.id()).correction();
            of(journal, place.id()).stream()
                    .filter(reading -> !reading.isSuspicious())
                    .reduce((one, next) -> next)
                    .map(reading ->
                            new LastRead(place.id(), reading.at(), new Temperature(reading.milli() + correction, "")))
                    .ifPresent(last::add);
        }
        return DaysRead.of(days, last);
    }

    List<ChartColumn> chart(Journal journal, Id<Place> place, Instant from, Instant toExclusive, int columns) {
        DaySums.Basis basis = basis(journal, place);
        Duration length = Duration.between(from, toExclusive);
        List<ChartColumn> known = new ArrayList<>();
        if (length.compareTo(Duration.ofDays(columns)) < 0) {
            tally(journal, place, SUMS.columns(basis, from, toExclusive, columns, known::add));
            return known;
        }
        Map<Long, List<DayRead>> days = days(journal, place).stream()
                .collect(Collectors.groupingBy(
                        day -> Math.floorDiv(
                                (day.day()
                                                        .atTime(LocalTime.NOON)
                                                        .atZone(basis.zone())
                                                        .toEpochSecond()
                                                - from.getEpochSecond())
                                        * columns,
                                length.toSeconds()),
                        TreeMap::new,
                        Collectors.toList()));
        days.forEach((column, some) -> {
            if (column >= 0 && column < columns) {
                double hours = some.stream().mapToDouble(DayRead::known).sum();
                double mean = some.stream()
                                .mapToDouble(day -> day.known() * day.mean())
                                .sum()
                        / hours;
                known.add(new ChartColumn(
                        column.intValue(),
                        some.stream().mapToInt(DayRead::lowest).min().orElseThrow(),
                        (int) Math.round(mean),
                        some.stream().mapToInt(DayRead::highest).max().orElseThrow()));
            }
        });
        return known;
    }

    String dump() {
        return logged.entrySet().stream()
                .flatMap(place -> place.getValue().values().stream()
                        .map(reading -> place.getKey() + " " + reading.at() + " " + reading.milli() + " "
                                + reading.isSuspicious()))
                .sorted()
                .collect(Collectors.joining("\n"));
    }
}
