// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import sillbook.chart.PotDrawing;
import sillbook.chart.PotDrawing.Middle;
import sillbook.chart.PotDrawing.Side;

/** A pot from the side, to scale: how deep its bulbs sit in the potting mix. Nothing in plain letters, where words say it. */
public record PotFromSide(PotDrawing pot) implements Widget {

    @Override
    public void render(Rect area, Cells cells) {
        if (cells.alphabet() == Alphabet.ASCII || area.rows() < 2 || area.columns() < 2) {
            return;
        }
        Dots dots = new Dots(area.columns(), area.rows());
        Side side = pot.side();
        double over = Math.max(0, side.tips() - side.surface());
        double scale = Math.min((dots.width() - 1) / pot.across(), (dots.height() - 1) / (side.height() + over));
        Frame frame = new Frame(dots.width() / 2.0, over * scale, scale);
        walls(dots, frame);
        surface(dots, frame);
        int inRow = (int) Math.max(1, Math.min(pot.bulbs().size(), Math.floor(pot.across() / pot.bulb())));
        for (int bulb = 0; bulb < inRow; bulb++) {
            double x = (bulb - (inRow - 1) / 2.0) * pot.across() / inRow;
            double y = side.surface() - side.tips() + pot.bulb() / 2;
            dots.circle(frame.at(x, y), pot.bulb() / 2 * scale);
        }
        dots.render(area, cells, Style.INK);
    }

    /** Where cm lie among the dots: from the middle, and below the rim. */
    private record Frame(double middle, double rim, double scale) {
        Middle at(double x, double below) {
            return new Middle(middle + x * scale, rim + below * scale);
        }
    }

    private void walls(Dots dots, Frame frame) {
        double rim = pot.across() / 2;
        double base = pot.side().base() / 2;
        double height = pot.side().height();
        dots.line(frame.at(-rim, 0), frame.at(-base, height));
        dots.line(frame.at(rim, 0), frame.at(base, height));
        dots.line(frame.at(-base, height), frame.at(base, height));
    }

    /** Every other dot. */
    private void surface(Dots dots, Frame frame) {
        double half = pot.across() / 2;
        double step = 2 / frame.scale();
        for (double x = -half + step; x < half; x += step) {
            Middle at = frame.at(x, pot.side().surface());
            dots.set(at.x(), at.y());
        }
    }
}
