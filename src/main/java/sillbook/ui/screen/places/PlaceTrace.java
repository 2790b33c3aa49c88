// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import sillbook.chart.Curve;
import sillbook.chart.LevelScale;
import sillbook.chart.TimeAxis;
import sillbook.chart.WarmDay;
import sillbook.chart.Warmth;
import sillbook.model.ChartColumn;
import sillbook.model.DayRead;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.SpanReading;
import sillbook.model.Stage;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.WarmthChart;
import sillbook.ui.draw.WarmthChart.Edges;
import sillbook.ui.screen.State;
import sillbook.words.Temperatures;

/**
 * What the chart of a place shows on an axis, in degrees of the grower's unit.
 *
 * @param isWhole whether the scale holds all of the band; a near look keeps to what was read
 * @param extremes whose lowest and highest are known
 * @param band empty where the grower has not said what is usual
 * @param signs for each part of the axis that it froze, or that it was out of its band, on any day of it
 */
record PlaceTrace(
        TimeAxis axis,
        Optional<Edges> band,
        double freezing,
        boolean servesCold,
        boolean isWhole,
        Curve read,
        Curve extremes,
        Curve foretold,
        List<Optional<Sign>> signs) {
    private static final double HOURS = 24;
    /** Rows from lowest to highest, on the average, without which they would only thicken the line between them. */
    private static final double ROWS_APART = 2;

    PlaceTrace {
        signs = List.copyOf(signs);
    }

    static PlaceTrace of(State state, Place place, ChartSpan span, int columns) {
        TimeAxis axis = span.axis(state, place.id(), columns);
        TemperatureUnit unit = state.journal().settings().temperatures();
        DoubleUnaryOperator degrees = celsius -> Temperatures.degrees(celsius, unit);
        Optional<Edges> band = state.almanac()
                .climate(place.id())
                .band()
                .map(usual -> new Edges(
                        degrees.applyAsDouble(usual.low().celsius()),
                        degrees.applyAsDouble(usual.high().celsius())));
        double freezing = degrees.applyAsDouble(0);
        List<WarmDay> days = shown(state.journal().daysRead().at(place.id()), axis)
                .map(day -> day(day, degrees))
                .toList();
        List<WarmDay> spans = spanned(state, place, degrees).toList();
        Optional<Curve> near = span.near(state, place.id()).map(read -> near(axis, read.columns(), degrees));
        Curve read = near.orElseGet(() -> Curve.of(axis, days));
        BandSigns signs = new BandSigns(band, freezing);
        return new PlaceTrace(
                axis,
                band,
                freezing,
                place.serves() == Stage.COLD,
                span.isSeason(),
                read,
                read.filledBy(Curve.of(axis, spans)),
                Curve.of(axis, foretold(state, place, degrees)),
                near.map(signs::of).orElseGet(() -> signs.of(axis, days, spans)));
    }

    /** Of all the years that a place was read, the days on the axis. */
    private static Stream<DayRead> shown(NavigableMap<LocalDate, DayRead> days, TimeAxis axis) {
        if (axis.count() == 0) {
            return Stream.empty();
        }
        LocalDate first = LocalDate.ofInstant(axis.from(0), axis.zone());
        LocalDate last = LocalDate.ofInstant(axis.to(axis.count() - 1), axis.zone());
        return days.subMap(first, true, last, false).values().stream();
    }

    /** As it was read for the parts of the axis, in their order. */
    private static Curve near(TimeAxis axis, List<ChartColumn> columns, DoubleUnaryOperator degrees) {
        List<Optional<Warmth>> parts = new ArrayList<>(Collections.nCopies(axis.count(), Optional.empty()));
        columns.forEach(column -> parts.set(
                column.column(),
                Optional.of(new Warmth(celsius(column.mean()), celsius(column.lowest()), celsius(column.highest()))
                        .in(degrees))));
        return new Curve(parts);
    }

    private static double celsius(int milli) {
        return milli / 1000.0;
    }

    /** How cold the ground is foretold to be, where pots stand buried. */
    private static List<WarmDay> foretold(State state, Place place, DoubleUnaryOperator degrees) {
        return state.almanac().ground(place.id()).stream()
                .flatMap(ground -> ground.days(ground.winter()).entrySet().stream())
                .map(day -> new WarmDay(
                        day.getKey(), HOURS, Warmth.steady(day.getValue()).in(degrees)))
                .toList();
    }

    private static WarmDay day(DayRead day, DoubleUnaryOperator degrees) {
        Warmth celsius = new Warmth(celsius(day.mean()), celsius(day.lowest()), celsius(day.highest()));
        return new WarmDay(day.day(), day.known(), celsius.in(degrees));
    }

    /** The days between a reset and a reading of lowest and highest, each with both; of their means nothing is known. */
    private static Stream<WarmDay> spanned(State state, Place place, DoubleUnaryOperator degrees) {
        return state.journal().spanReadings().all().stream()
                .filter(reading -> reading.place().equals(place.id()))
                .flatMap(reading -> days(reading, degrees));
    }

    private static Stream<WarmDay> days(SpanReading reading, DoubleUnaryOperator degrees) {
        double low = reading.between().low().celsius();
        double high = reading.between().high().celsius();
        Warmth celsius = new Warmth((low + high) / 2, low, high);
        LocalDate from = reading.from().likely();
        LocalDate to = reading.to().likely();
        return from.isBefore(to)
                ? from.datesUntil(to).map(day -> new WarmDay(day, HOURS, celsius.in(degrees)))
                : Stream.empty();
    }

    boolean isEmpty() {
        return read.isEmpty() && extremes.isEmpty() && foretold.isEmpty();
    }

    /** In so many rows; with lowest and highest where they stand clear of the mean, or are all that is known. */
    WarmthChart chart(int rows) {
        LevelScale plain = scale(rows, withoutExtremes());
        double apart = extremes.known()
                .mapToDouble(warmth -> warmth.highest() - warmth.lowest())
                .average()
                .orElse(0);
        boolean isClear = read.isEmpty() || apart >= ROWS_APART * plain.tickStep();
        Curve shown = isClear ? extremes : new Curve(List.of());
        LevelScale scale = isClear ? scale(rows, Stream.concat(withoutExtremes(), around())) : plain;
        return new WarmthChart(axis, scale, band, read, shown, foretold);
    }

    private Stream<Double> withoutExtremes() {
        Stream<Double> means = Stream.concat(read.known(), foretold.known()).map(Warmth::mean);
        return Stream.concat(means, isWhole ? landmarks() : Stream.empty());
    }

    /** The edges of the band; in the cold, where it was ever under them, also the point at which water freezes. */
    private Stream<Double> landmarks() {
        Stream<Double> edges = band.stream().flatMap(all -> Stream.of(all.low(), all.high()));
        return servesCold && isEverUnder() ? Stream.concat(edges, Stream.of(freezing)) : edges;
    }

    private boolean isEverUnder() {
        double low = band.map(Edges::low).orElse(Double.POSITIVE_INFINITY);
        return Stream.of(read, extremes, foretold).flatMap(Curve::known).anyMatch(warmth -> warmth.lowest() < low);
    }

    private Stream<Double> around() {
        return extremes.known().flatMap(warmth -> Stream.of(warmth.lowest(), warmth.highest()));
    }

    private static LevelScale scale(int rows, Stream<Double> values) {
        List<Double> all = values.toList();
        return all.isEmpty()
                ? LevelScale.covering(0, 1, rows)
                : LevelScale.covering(Collections.min(all), Collections.max(all), rows);
    }
}
