// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sillbook.chart.Curve;
import sillbook.chart.LevelScale;
import sillbook.chart.TimeAxis;
import sillbook.chart.WarmDay;
import sillbook.chart.Warmth;
import sillbook.model.Band;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.WarmthChart;
import sillbook.ui.draw.WarmthChart.Edges;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.words.Temperatures;

/**
 * The days of a file drawn small under the ruler.
 *
 * @param days their means, in thousandths of a degree Celsius
 */
record ReadingsDrawn(State state, Id<Place> place, NavigableMap<LocalDate, Integer> days) implements Widget {
    static final int ROWS = 3;

    private static final double HOURS = 24;
    private static final double MILLI = 1000;
    private static final int TICKS = 6;
    private static final double[] STEPS = {1, 2, 3, 4, 5};

    @Override
    public void render(Rect area, Cells cells) {
        ZoneId zone = state.journal().settings().zone();
        TimeAxis axis = TimeAxis.of(state.timescale().ruler(state, area.columns()), zone);
        Curve curve = Curve.of(axis, warmDays());
        cells.put(area.column() + 1, area.row(), "Drawn", Style.BOLD);
        if (curve.isEmpty()) {
            cells.put(area.column() + 1, area.row() + 1, outside(axis.leftColumns() - TICKS), Style.PENCIL);
            return;
        }
        band().ifPresent(band -> cells.put(
                area.column() + 1,
                area.row() + 1,
                Columns.fit("band " + Temperatures.say(band, unit()), axis.leftColumns() - TICKS),
                Style.PENCIL));
        chart(axis, curve, area.rows()).render(area, cells);
    }

    private static String outside(int columns) {
        return Columns.fit("not in the season shown", columns);
    }

    private TemperatureUnit unit() {
        return state.journal().settings().temperatures();
    }

    private double degrees(double celsius) {
        return Temperatures.degrees(celsius, unit());
    }

    private List<WarmDay> warmDays() {
        return days.entrySet().stream()
                .map(day -> new WarmDay(day.getKey(), HOURS, Warmth.steady(degrees(day.getValue() / MILLI))))
                .toList();
    }

    private Optional<Band> band() {
        return state.journal().places().find(place).flatMap(Place::usual);
    }

    /** Few rows want the finest scale that will do. */
    private static LevelScale scale(double low, double high, int rows) {
        return DoubleStream.of(STEPS)
                .mapToObj(step -> new LevelScale(Math.ceil(low / step) * step, step, rows))
                .filter(scale -> scale.at(low).isPresent() && scale.at(high).isPresent())
                .findFirst()
                .orElseGet(() -> LevelScale.covering(low, high, rows));
    }

    private WarmthChart chart(TimeAxis axis, Curve curve, int rows) {
        Optional<Edges> edges = band().map(band ->
                new Edges(degrees(band.low().celsius()), degrees(band.high().celsius())));
        List<Double> values = Stream.concat(
                        curve.known().map(Warmth::mean),
                        edges.stream().flatMap(both -> Stream.of(both.low(), both.high())))
                .toList();
        LevelScale scale = scale(Collections.min(values), Collections.max(values), rows);
        Curve nothing = new Curve(List.of());
        return new WarmthChart(axis, scale, edges, curve, nothing, nothing);
    }
}
