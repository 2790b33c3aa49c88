// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Readings in the order of time, taken to go evenly from one to the next; what is integrated is exact for that.
 *
 * @param readings one a moment
 * @param longestBridged what is longer between two readings is a gap, and not accounted for
 */
public record Trace(List<Reading> readings, Duration longestBridged) {
    /** Of a place that changes within a day. */
    public static final Duration HALF_A_DAY = Duration.ofHours(12);

    public Trace {
        readings = List.copyOf(readings);
    }

    /** Of readings in any order; several of one moment count as their mean. */
    public static Trace of(Collection<Reading> readings, Duration longestBridged) {
        TreeMap<Instant, List<Double>> moments = new TreeMap<>();
        readings.forEach(reading ->
                moments.computeIfAbsent(reading.at(), none -> new ArrayList<>()).add(reading.celsius()));
        return new Trace(
                moments.entrySet().stream()
                        .map(moment -> new Reading(moment.getKey(), mean(moment.getValue())))
                        .toList(),
                longestBridged);
    }

    private static double mean(List<Double> several) {
        return several.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** What of it lies between two moments; at the ends, where none was read, what would have been. */
    public Trace between(Instant from, Instant to) {
        List<Reading> inside = new ArrayList<>();
        for (Stretch stretch : stretches()) {
            if (stretch.last().at().isAfter(from) && stretch.first().at().isBefore(to)) {
                Stretch begun = stretch.first().at().isBefore(from) ? stretch.from(from) : stretch;
                Stretch cut = begun.last().at().isAfter(to) ? begun.until(to) : begun;
                inside.add(cut.first());
                inside.add(cut.last());
            }
        }
        return of(inside, longestBridged);
    }

    List<Stretch> stretches() {
        return IntStream.range(1, readings.size())
                .mapToObj(i -> new Stretch(readings.get(i - 1), readings.get(i)))
                .toList();
    }

    private boolean isGap(Stretch stretch) {
        return stretch.length().compareTo(longestBridged) > 0;
    }

    /** The cold of all of it. */
    public ColdHad cold(HourWorth worth) {
        List<Stretch> all = stretches();
        List<Stretch> known = all.stream().filter(stretch -> !isGap(stretch)).toList();
        double hours = sum(all, Stretch::hours);
        return new ColdHad(
                readings.size(),
                hours,
                sum(known, stretch -> stretch.effective(worth)),
                Optional.of(sum(all, stretch -> stretch.effective(worth))),
                sum(known, stretch -> stretch.effective(StrictCount.HOURS)),
                tally(),
                sum(known, stretch -> stretch.hoursUpTo(ColdHad.CHILLING) - stretch.hoursBelow(0)),
                sum(known, stretch -> stretch.hoursBelow(0)),
                WarmSpell.joined(known.stream().flatMap(stretch -> warm(stretch).stream())),
                hours - sum(known, Stretch::hours));
    }

    private static double sum(List<Stretch> stretches, ToDoubleFunction<Stretch> of) {
        return stretches.stream().mapToDouble(of).sum();
    }

    private int tally() {
        return (int) readings.stream()
                .filter(reading -> StrictCount.counts(reading.celsius()))
                .count();
    }

    /** The moment at which so many effective hours were reached, gaps left out; empty where they were not. */
    public Optional<Instant> reached(HourWorth worth, double hours) {
        double sum = 0;
        for (Stretch stretch : stretches()) {
            double more = isGap(stretch) ? 0 : stretch.effective(worth);
            if (more > 0 && sum + more >= hours) {
                return Optional.of(within(stretch, worth, hours - sum));
            }
            sum += more;
        }
        return Optional.empty();
    }

    /**
     * How many degree-days above a base each day adds, in C; gaps add nothing.
     *
     * @param zone whose midnights part days
     */
    public NavigableMap<LocalDate, Double> degreeDays(double base, ZoneId zone) {
        NavigableMap<LocalDate, Double> added = new TreeMap<>();
        stretches().stream()
                .filter(stretch -> !isGap(stretch))
                .flatMap(stretch -> byDay(stretch, zone))
                .forEach(part -> added.merge(
                        LocalDate.ofInstant(part.first().at(), zone), part.degreeDaysAbove(base), Double::sum));
        return added;
    }

    private static Stream<Stretch> byDay(Stretch stretch, ZoneId zone) {
        LocalDate day = LocalDate.ofInstant(stretch.first().at(), zone);
        Instant midnight = day.plusDays(1).atStartOfDay(zone).toInstant();
        return midnight.isBefore(stretch.last().at())
                ? Stream.concat(Stream.of(stretch.until(midnight)), byDay(stretch.from(midnight), zone))
                : Stream.of(stretch);
    }

    /** By halves, to a thousandth of a second: what counts never falls with time. */
    private static Instant within(Stretch stretch, HourWorth worth, double wanted) {
        Instant early = stretch.first().at();
        Instant late = stretch.last().at();
        while (Duration.between(early, late).toMillis() > 0) {
            Instant middle = early.plus(Duration.between(early, late).dividedBy(2));
            if (stretch.until(middle).effective(worth) >= wanted) {
                late = middle;
            } else {
                early = middle;
            }
        }
        return late.truncatedTo(ChronoUnit.MILLIS);
    }

    /** What of a stretch is too warm. */
    private static Optional<WarmSpell> warm(Stretch stretch) {
        double start = stretch.first().celsius();
        double end = stretch.last().celsius();
        if (Math.max(start, end) <= WarmSpell.ABOVE) {
            return Optional.empty();
        }
        return Optional.of(new WarmSpell(
                start > WarmSpell.ABOVE ? stretch.first().at() : stretch.passes(WarmSpell.ABOVE),
                end > WarmSpell.ABOVE ? stretch.last().at() : stretch.passes(WarmSpell.ABOVE),
                Math.max(start, end)));
    }
}
