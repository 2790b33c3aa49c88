// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import sillbook.reckon.heat.SineDay;

/**
 * Days known by their lowest and highest, each taken as one sine wave. A day that is not there is not accounted for.
 *
 * @param days in order
 */
public record DayTrace(NavigableMap<LocalDate, SineDay> days) {
    private static final double HOURS = 24;

    public DayTrace {
        days = Collections.unmodifiableNavigableMap(new TreeMap<>(days));
    }

    /** What of it lies between two days, both in it. */
    public DayTrace between(LocalDate from, LocalDate to) {
        return new DayTrace(days.subMap(from, true, to, true));
    }

    /** The cold of all of it; nothing is made up for a day that is not there. */
    public ColdHad cold(HourWorth worth) {
        return new ColdHad(
                days.size(),
                HOURS * length(),
                sum(worth::of),
                Optional.empty(),
                sum(StrictCount.HOURS::of),
                (int) days.values().stream().filter(DayTrace::isStrict).count(),
                sum(day -> day.hoursAbove(0) - day.hoursAbove(ColdHad.CHILLING)),
                sum(day -> HOURS - day.hoursAbove(0)),
                warmSpells(),
                HOURS * (length() - days.size()));
    }

    /** How many degree-days above a base each day adds, in C. */
    public NavigableMap<LocalDate, Double> degreeDays(double base) {
        NavigableMap<LocalDate, Double> added = new TreeMap<>();
        days.forEach((day, sine) -> added.put(day, sine.degreesAbove(base)));
        return added;
    }

    private static boolean isStrict(SineDay day) {
        return StrictCount.counts((day.lowest() + day.highest()) / 2);
    }

    private long length() {
        return days.isEmpty() ? 0 : ChronoUnit.DAYS.between(days.firstKey(), days.lastKey()) + 1;
    }

    private double sum(ToDoubleFunction<SineDay> of) {
        return days.values().stream().mapToDouble(of).sum();
    }

    /** The first day by whose end so many effective hours were reached; empty where they were not. */
    public Optional<LocalDate> reached(HourWorth worth, double hours) {
        double sum = 0;
        for (Map.Entry<LocalDate, SineDay> day : days.entrySet()) {
            sum += worth.of(day.getValue());
            if (sum >= hours) {
                return Optional.of(day.getKey());
            }
        }
        return Optional.empty();
    }

    /** Days all of whose hours are too warm, more than one on end; when in a day the warmth began or ended is not known. */
    private List<WarmSpell> warmSpells() {
        return WarmSpell.joined(days.entrySet().stream()
                .filter(day -> day.getValue().lowest() > WarmSpell.ABOVE)
                .map(day -> new WarmSpell(
                        start(day.getKey()),
                        start(day.getKey().plusDays(1)),
                        day.getValue().highest())));
    }

    private static Instant start(LocalDate day) {
        return day.atStartOfDay().toInstant(ZoneOffset.UTC);
    }
}
