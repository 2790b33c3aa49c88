// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sillbook.chart.Curve;
import sillbook.chart.LevelScale;
import sillbook.chart.TimeAxis;
import sillbook.chart.WarmDay;
import sillbook.chart.Warmth;
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
 * @param extremes whose lowest and highest are known
 * @param band empty where the grower has not said what is usual
 * @param signs for each part of the axis that it froze, or that it was out of its band, on any day of it
 */
record PlaceTrace(
        TimeAxis axis,
        Optional<Edges> band,
        Curve read,
        Curve extremes,
        Curve foretold,
        List<Optional<Sign>> signs,
        double freezing,
        boolean servesCold) {
    private static final double HOURS = 24;
    /** Rows from lowest to highest, on the average, without which they would only thicken the line between them. */
    private static final double ROWS_APART = 2;

    PlaceTrace {
        signs = List.copyOf(signs);
    }

    static PlaceTrace of(State state, Place place, TimeAxis axis) {
        TemperatureUnit unit = state.journal().settings().temperatures();
        DoubleUnaryOperator degrees = celsius -> Temperatures.degrees(celsius, unit);
        Collection<DayRead> days = state.journal().daysRead().at(place.id()).values();
        Optional<Edges> band = place.usual()
                .map(usual -> new Edges(
                        degrees.applyAsDouble(usual.low().celsius()),
                        degrees.applyAsDouble(usual.high().celsius())));
        double freezing = degrees.applyAsDouble(0);
        List<WarmDay> read =
                days.stream().map(PlaceTrace::day).map(day -> in(day, degrees)).toList();
        List<WarmDay> spans = spanned(state, place).map(day -> in(day, degrees)).toList();
        List<WarmDay> all = Stream.concat(read.stream(), spans.stream()).toList();
        return new PlaceTrace(
                axis,
                band,
                Curve.of(axis, read),
                Curve.of(axis, all),
                Curve.of(axis, List.of()),
                signs(axis, all, band, freezing),
                freezing,
                place.serves() == Stage.COLD);
    }

    private static WarmDay in(WarmDay day, DoubleUnaryOperator degrees) {
        return new WarmDay(day.day(), day.weight(), day.warmth().in(degrees));
    }

    private static WarmDay day(DayRead day) {
        return new WarmDay(
                day.day(), day.known(), new Warmth(day.mean() / 1000.0, day.lowest() / 1000.0, day.highest() / 1000.0));
    }

    /** The days between a reset and a reading of lowest and highest, each with both; of their means nothing is known. */
    private static Stream<WarmDay> spanned(State state, Place place) {
        return state.journal().spanReadings().all().stream()
                .filter(reading -> reading.place().equals(place.id()))
                .flatMap(PlaceTrace::days);
    }

    private static Stream<WarmDay> days(SpanReading reading) {
        double low = reading.between().low().celsius();
        double high = reading.between().high().celsius();
        LocalDate from = reading.from().likely();
        LocalDate to = reading.to().likely();
        return from.isBefore(to)
                ? from.datesUntil(to).map(day -> new WarmDay(day, HOURS, new Warmth((low + high) / 2, low, high)))
                : Stream.empty();
    }

    private static List<Optional<Sign>> signs(
            TimeAxis axis, Collection<WarmDay> days, Optional<Edges> band, double freezing) {
        List<Optional<Sign>> signs = new ArrayList<>(Collections.nCopies(axis.count(), Optional.empty()));
        for (WarmDay day : days) {
            sign(day.warmth(), band, freezing)
                    .ifPresent(sign -> axis.parts(day.day())
                            .filter(part -> signs.get(part)
                                    .filter(Sign.BELOW_BAND::equals)
                                    .isEmpty())
                            .forEach(part -> signs.set(part, Optional.of(sign))));
        }
        return signs;
    }

    /** Frost is the graver: it stands where a part had both. */
    private static Optional<Sign> sign(Warmth warmth, Optional<Edges> band, double freezing) {
        boolean isUnder = band.filter(edges -> warmth.mean() < edges.low()).isPresent();
        if (warmth.lowest() < freezing || isUnder) {
            return Optional.of(Sign.BELOW_BAND);
        }
        return band.filter(edges -> warmth.mean() > edges.high()).map(edges -> Sign.ABOVE_BAND);
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

    /** All that is drawn in any case; in the cold also the point at which water freezes. */
    private Stream<Double> withoutExtremes() {
        return Stream.of(
                        Stream.concat(read.known(), foretold.known()).mapToDouble(Warmth::mean),
                        band.stream().flatMapToDouble(edges -> DoubleStream.of(edges.low(), edges.high())),
                        servesCold ? DoubleStream.of(freezing) : DoubleStream.empty())
                .flatMap(DoubleStream::boxed);
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
