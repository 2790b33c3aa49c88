// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Time laid across a page in parts, each a column, with the fold in a column of its own after the part that holds the end of today. The
 * ruler is such an axis; a chart of a few weeks or days has one of its own. Columns of the page count from 0 at its left edge.
 *
 * @param bounds where the parts begin, and last where the last one ends
 * @param leftColumns how many columns of the page lie left of the first part
 * @param foldAfter the part after which the fold stands; empty where today is not shown
 */
public record TimeAxis(ZoneId zone, List<Instant> bounds, int leftColumns, OptionalInt foldAfter) {
    public TimeAxis {
        bounds = List.copyOf(bounds);
        for (int i = 1; i < bounds.size(); i++) {
            if (!bounds.get(i - 1).isBefore(bounds.get(i))) {
                throw new IllegalArgumentException("no time passes from " + bounds.get(i - 1) + " to " + bounds.get(i));
            }
        }
    }

    /** The cells of the ruler. */
    public static TimeAxis of(RulerLayout ruler, ZoneId zone) {
        List<Instant> bounds = new ArrayList<>();
        for (int cell = 0; cell < ruler.cells(); cell++) {
            bounds.add(midnight(ruler.days(cell).fromInclusive(), zone));
        }
        if (ruler.cells() > 0) {
            bounds.add(midnight(ruler.days(ruler.cells() - 1).toExclusive(), zone));
        }
        return new TimeAxis(zone, bounds, ruler.leftColumns(), ruler.todayCell());
    }

    /** Whole days, each in so many equal parts; a day of 23 or 25 hours has shorter or longer ones. */
    public static TimeAxis of(Days days, int partsADay, LocalDate today, int leftColumns, ZoneId zone) {
        List<Instant> bounds = new ArrayList<>();
        for (LocalDate day = days.fromInclusive(); day.isBefore(days.toExclusive()); day = day.plusDays(1)) {
            Instant from = midnight(day, zone);
            Duration length = Duration.between(from, midnight(day.plusDays(1), zone));
            for (int part = 0; part < partsADay; part++) {
                bounds.add(from.plus(length.multipliedBy(part).dividedBy(partsADay)));
            }
        }
        bounds.add(midnight(days.toExclusive(), zone));
        return new TimeAxis(zone, bounds, leftColumns, foldAfter(days, partsADay, today));
    }

    private static OptionalInt foldAfter(Days days, int partsADay, LocalDate today) {
        if (!days.contains(today)) {
            return OptionalInt.empty();
        }
        long through = new Days(days.fromInclusive(), today.plusDays(1)).count();
        return OptionalInt.of(Math.toIntExact(through * partsADay) - 1);
    }

    private static Instant midnight(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }

    /** How many parts there are. */
    public int count() {
        return Math.max(0, bounds.size() - 1);
    }

    public Instant from(int part) {
        return bounds.get(part);
    }

    public Instant to(int part) {
        return bounds.get(part + 1);
    }

    /** The part that holds an instant, if it is shown. */
    public OptionalInt part(Instant at) {
        int found = Collections.binarySearch(bounds, at);
        int part = found >= 0 ? found : -found - 2;
        return part >= 0 && part < count() ? OptionalInt.of(part) : OptionalInt.empty();
    }

    /** The part in which a day begins, if it is shown. */
    public OptionalInt part(LocalDate day) {
        return part(midnight(day, zone));
    }

    /** The parts that hold anything of what lies from one instant up to another, in order. */
    public IntStream parts(Instant fromInclusive, Instant toExclusive) {
        if (count() == 0 || !fromInclusive.isBefore(toExclusive)) {
            return IntStream.empty();
        }
        int first = part(fromInclusive).orElse(fromInclusive.isBefore(from(0)) ? 0 : count());
        return IntStream.range(first, count()).takeWhile(part -> from(part).isBefore(toExclusive));
    }

    /** The parts that hold anything of a day. */
    public IntStream parts(LocalDate day) {
        return parts(midnight(day, zone), midnight(day.plusDays(1), zone));
    }

    /** The column of the page a part stands in. */
    public int column(int part) {
        return leftColumns + part + (foldAfter.isPresent() && part > foldAfter.getAsInt() ? 1 : 0);
    }

    /** The column of the fold. */
    public OptionalInt foldColumn() {
        return foldAfter.isPresent() ? OptionalInt.of(column(foldAfter.getAsInt()) + 1) : OptionalInt.empty();
    }
}
