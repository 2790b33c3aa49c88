// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.List;
import sillbook.chart.TimeAxis;
import sillbook.model.Place;
import sillbook.season.Moves;
import sillbook.season.PlaceClimate;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;

/** How warm a place was: signs over the curve, and at the left what the curve comes to. */
record PlaceChart(State state, Place place, ChartSpan span) implements Widget {
    /** The signs and eight rows of curve, which take a scale of two degrees from frost to a warm room. */
    static final int FEWEST_ROWS = 9;

    /** More rows only pull the curve apart. */
    static final int MOST_ROWS = 17;

    private static final int LEGEND = 1;
    /** Columns of ticks and bracket between the legend and the axis. */
    private static final int TICKS = 6;

    private static final String POT_IN = " pot in  ";
    private static final String POT_OUT = " pot out ";

    private PlaceTrace trace(int columns) {
        return PlaceTrace.of(state, place, span, columns);
    }

    /** Whether there is anything to draw in a window so wide; a nearer look may well fall into a gap. */
    boolean isShown(int columns) {
        boolean isNear = !span.isSeason();
        boolean wasRead = state.almanac().climate(place.id()).lastDay().isPresent();
        return (isNear && wasRead) || !trace(columns).isEmpty();
    }

    @Override
    public void render(Rect area, Cells cells) {
        PlaceTrace trace = trace(area.columns());
        renderSigns(trace, area.line(0), cells);
        Rect below = span.isSeason() ? area.withoutTop(1) : area.withoutTop(1).withoutBottom(1);
        if (!span.isSeason()) {
            new ChartAxis(trace.axis()).render(area.line(area.rows() - 1), cells);
        }
        trace.chart(below.rows()).render(below, cells);
        renderLegend(trace, below, cells);
    }

    private static void renderSigns(PlaceTrace trace, Rect line, Cells cells) {
        for (int part = 0; part < trace.signs().size(); part++) {
            int column = line.column() + trace.axis().column(part);
            trace.signs().get(part).ifPresent(sign -> cells.put(column, line.row(), sign, style(sign)));
        }
    }

    static Style style(Sign sign) {
        return Style.of(sign == Sign.BELOW_BAND ? Role.FROST : Role.LAMP);
    }

    private void renderLegend(PlaceTrace trace, Rect area, Cells cells) {
        Rect part = area.columns(LEGEND, trace.axis().leftColumns() - LEGEND - TICKS);
        new PlaceLegend(place, span, trace, climate().season()).render(part, cells);
    }

    private PlaceClimate climate() {
        return state.almanac().climate(place.id(), ChartSpan.lastShown(state));
    }

    /** The days on which pots came and went, on the foot rule. */
    Widget moves() {
        Moves moves = state.almanac().moves(state.timescale().season(), place.id());
        return moves.isEmpty() ? (line, cells) -> {} : (line, cells) -> renderMoves(moves, line, cells);
    }

    private void renderMoves(Moves moves, Rect line, Cells cells) {
        TimeAxis axis = span.axis(state, place.id(), line.columns());
        int column = line.column() + 1;
        column = cells.put(column, line.row(), " ", Style.INK);
        column = cells.put(column, line.row(), Sign.POT_IN, Style.INK);
        column = cells.put(column, line.row(), POT_IN, Style.INK);
        column = cells.put(column, line.row(), Sign.POT_OUT, Style.INK);
        cells.put(column, line.row(), POT_OUT, Style.INK);
        ticks(moves.out(), Sign.POT_OUT, axis, line, cells);
        ticks(moves.in(), Sign.POT_IN, axis, line, cells);
    }

    private static void ticks(List<LocalDate> days, Sign sign, TimeAxis axis, Rect line, Cells cells) {
        days.forEach(day -> axis.part(day)
                .ifPresent(part -> cells.put(line.column() + axis.column(part), line.row(), sign, Style.BOLD)));
    }
}
