// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sillbook.model.ChartColumn;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.store.DaySums;
import sillbook.store.DaySums.Basis;

/** How warm a place was, column by column. */
record ChartReading(DayReads days, Readings readings, DaySums sums, Id<Place> place) {
    private static final Duration DAY = Duration.ofDays(1);

    List<ChartColumn> columns(Instant from, Instant toExclusive, int columns) {
        Duration length = Duration.between(from, toExclusive);
        return length.compareTo(DAY.multipliedBy(columns)) < 0
                ? fromReadings(from, toExclusive, columns)
                : fromDays(from, length.toSeconds(), columns);
    }

    private List<ChartColumn> fromReadings(Instant from, Instant toExclusive, int columns) {
        List<ChartColumn> known = new ArrayList<>();
        readings.tally(
                place,
                from.getEpochSecond(),
                toExclusive.getEpochSecond(),
                sums.columns(days.basis(place), from, toExclusive, columns, known::add));
        return List.copyOf(known);
    }

    private List<ChartColumn> fromDays(Instant from, long length, int columns) {
        Basis basis = days.basis(place);
        LocalDate first = LocalDate.ofInstant(from, basis.zone());
        LocalDate last = LocalDate.ofInstant(from.plusSeconds(length), basis.zone());
        Map<Integer, Gathering> gathered = new TreeMap<>();
        for (DayRead day : days.between(place, first, last)) {
            long noon = day.day().atTime(LocalTime.NOON).atZone(basis.zone()).toEpochSecond();
            long column = Math.floorDiv((noon - from.getEpochSecond()) * columns, length);
            if (column >= 0 && column < columns) {
                gathered.computeIfAbsent((int) column, none -> new Gathering()).add(day);
            }
        }
        return gathered.entrySet().stream()
                .map(entry -> entry.getValue().column(entry.getKey()))
                .toList();
    }

    /** The days of one column. */
    private static final class Gathering {
        private int lowest = Integer.MAX_VALUE;
        private int highest = Integer.MIN_VALUE;
        private double hours;
        private double degreeHours;

        void add(DayRead day) {
            lowest = Math.min(lowest, day.lowest());
            highest = Math.max(highest, day.highest());
            hours += day.known();
            degreeHours += day.known() * day.mean();
        }

        ChartColumn column(int number) {
            return new ChartColumn(number, lowest, (int) Math.round(degreeHours / hours), highest);
        }
    }
}
