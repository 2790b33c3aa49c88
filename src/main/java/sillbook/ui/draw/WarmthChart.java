// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.Locale;
import java.util.Optional;
import sillbook.chart.Curve;
import sillbook.chart.LevelScale;
import sillbook.chart.TimeAxis;
import sillbook.chart.Warmth;
import sillbook.text.Width;

/**
 * How warm a place was, along an axis of time: the mean in ink, thin above and below it the highest and lowest, dotted what is foretold and
 * the edges of the band it should stay in. What is not known is left blank. At the left of the axis stand the ticks, and a bracket as tall
 * as the band. It takes as many rows as its scale has.
 *
 * @param read drawn in ink
 * @param extremes whose lowest and highest are drawn; has no parts where they would crowd the line
 * @param foretold what was read is drawn over it
 */
public record WarmthChart(
        TimeAxis axis, LevelScale scale, Optional<Edges> band, Curve read, Curve extremes, Curve foretold)
        implements Widget {
    /** From the bracket to the axis, and from the ticks to the bracket. */
    private static final int BRACKET = 1;

    private static final int TICKS_END = 2;

    /** The lowest and highest a band allows. */
    public record Edges(double low, double high) {}

    /** What lies over its band is warm, what lies under it, or under what freezes, is cold. */
    private Style style(double value) {
        if (band.filter(edges -> value > edges.high()).isPresent()) {
            return Style.of(Role.LAMP);
        }
        return band.filter(edges -> value < edges.low()).isPresent() ? Style.of(Role.FROST) : Style.INK;
    }

    @Override
    public void render(Rect area, Cells cells) {
        band.ifPresent(edges -> renderBand(edges, area, cells));
        renderTicks(area, cells);
        for (int part = 0; part < axis.count(); part++) {
            renderPart(part, area.columns(axis.column(part), 1), cells);
        }
        axis.foldColumn().ifPresent(column -> cells.fill(area.columns(column, 1), Sign.FOLD, Style.PENCIL));
    }

    private void renderBand(Edges edges, Rect area, Cells cells) {
        Optional<Integer> high = scale.at(edges.high()).map(LevelScale.Place::row);
        Optional<Integer> low = scale.at(edges.low()).map(LevelScale.Place::row);
        int top = high.orElse(0);
        int bottom = low.orElse(scale.rows() - 1);
        Rect bracket = area.columns(axis.leftColumns() - BRACKET, 1).lines(top, bottom - top + 1);
        boolean crosses = edges.low() < scale.tick(0) && edges.high() > scale.tick(scale.rows() - 1);
        if (crosses) {
            cells.fill(bracket, Sign.BAND, Style.PENCIL);
        }
        if (top < bottom) {
            high.ifPresent(row -> cells.fill(bracket.line(0), Sign.BAND_UPPER, Style.PENCIL));
            low.ifPresent(row -> cells.fill(bracket.line(bottom - top), Sign.BAND_LOWER, Style.PENCIL));
        }
        for (int part = 0; part < axis.count(); part++) {
            Rect column = area.columns(axis.column(part), 1);
            put(edges.low(), Level.EDGE, Style.PENCIL, column, cells);
            put(edges.high(), Level.EDGE, Style.PENCIL, column, cells);
        }
    }

    private void renderTicks(Rect area, Cells cells) {
        int places = scale.tickStep() < 1 ? 1 : 0;
        for (int row = 0; row < scale.rows(); row++) {
            String tick = String.format(Locale.ROOT, "%." + places + "f", scale.tick(row) + 0.0);
            int column = area.column() + axis.leftColumns() - TICKS_END - Width.of(tick);
            cells.put(column, area.row() + row, tick, Style.PENCIL);
        }
    }

    private void renderPart(int part, Rect column, Cells cells) {
        Optional<Warmth> known = part(read, part);
        Optional<Warmth> around = part(extremes, part);
        part(foretold, part)
                .ifPresent(warmth -> put(warmth.mean(), Level.FORETOLD, style(warmth.mean()), column, cells));
        around.ifPresent(warmth -> {
            putExtreme(warmth.lowest(), known.isEmpty(), column, cells);
            putExtreme(warmth.highest(), known.isEmpty(), column, cells);
        });
        known.ifPresent(
                warmth -> put(warmth.mean(), Level.READ, style(warmth.mean()).withBold(), column, cells));
    }

    private static Optional<Warmth> part(Curve curve, int part) {
        return part < curve.parts().size() ? curve.parts().get(part) : Optional.empty();
    }

    /** In pencil beside a mean; in ink where it is all that was read. */
    private void putExtreme(double value, boolean isAll, Rect column, Cells cells) {
        Style style = style(value);
        Style thin = style.role() == Role.INK ? Style.PENCIL : style;
        put(value, Level.EXTREME, isAll ? style.withBold() : thin, column, cells);
    }

    private void put(double value, Level level, Style style, Rect column, Cells cells) {
        scale.at(value)
                .ifPresent(at -> cells.put(column.column(), column.row() + at.row(), level.at(at.level()), style));
    }
}
