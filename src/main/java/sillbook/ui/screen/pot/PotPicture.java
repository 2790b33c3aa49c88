// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.chart.PotDrawing;
import sillbook.chart.PotDrawing.Middle;
import sillbook.chart.PotDrawing.Side;
import sillbook.model.Potting;
import sillbook.reckon.fit.Filling;
import sillbook.reckon.packing.Point;
import sillbook.season.PotFit;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.PotFromAbove;
import sillbook.ui.draw.PotFromSide;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Sits;

/**
 * How the bulbs of a pot sit: from above to scale with numbered places, from the side how deep, and how many would fit.
 *
 * @param says in short lines what stands beside it
 */
public record PotPicture(PotDrawing drawing, List<String> says) implements Widget {
    /** Lines it takes. */
    public static final int ROWS = 9;

    private static final int BETWEEN = 2;
    private static final int SIDE = 16;

    private static final double COVERED = -2.5;
    private static final double JUST_COVERED = -1;
    private static final double TIPS_OUT = 0.5;
    private static final double THIRD = 3;
    private static final double HALF = 2;

    public PotPicture {
        says = List.copyOf(says);
    }

    /** Empty where so many are not known to fit. */
    public static Optional<PotPicture> of(Sits sits) {
        return sits.fit().places().isEmpty()
                ? Optional.empty()
                : Optional.of(new PotPicture(drawing(sits.fit(), sits.depth()), sits.says()));
    }

    private static PotDrawing drawing(PotFit fit, Potting.Depth depth) {
        List<Middle> middles = new ArrayList<>();
        for (Point place : fit.places()) {
            middles.add(new Middle(place.x(), place.y()));
        }
        Side side = new Side(
                fit.shape().height(),
                fit.shape().bottom(),
                Filling.BELOW_RIM,
                tips(depth, fit.bed().bulb()));
        return new PotDrawing(fit.bed().across(), fit.bed().bulb(), middles, side);
    }

    private static double tips(Potting.Depth depth, double bulb) {
        return switch (depth) {
            case HALF_OUT -> bulb / HALF;
            case THIRD_OUT -> bulb / THIRD;
            case TIPS_OUT -> TIPS_OUT;
            // Where nobody said how deep, tips level with the potting mix are drawn.
            case NOT_SAID, TIPS_LEVEL -> 0;
            case JUST_COVERED -> JUST_COVERED;
            case COVERED -> COVERED;
        };
    }

    @Override
    public void render(Rect area, Cells cells) {
        int rows = Math.min(ROWS, area.rows());
        int above = PotFromAbove.columns(rows);
        new PotFromAbove(drawing).render(new Rect(area.column(), area.row(), above, rows), cells);
        int side = area.column() + above + BETWEEN;
        new PotFromSide(drawing).render(new Rect(side, area.row(), SIDE, rows), cells);
        int text = side + SIDE + BETWEEN;
        for (int line = 0; line < Math.min(says.size(), rows); line++) {
            cells.put(text, area.row() + line, says.get(line), Style.INK);
        }
    }
}
