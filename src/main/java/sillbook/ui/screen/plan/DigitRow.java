// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.time.LocalDate;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import sillbook.chart.RulerLayout;
import sillbook.plan.Ribbon;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/**
 * A digit under each stretch of the months.
 *
 * @param of a day; more than nine is shown as a plus
 * @param overDays which of the figures of several days stands for them
 */
record DigitRow(
        RulerLayout ruler, Ribbon ribbon, ToIntFunction<LocalDate> of, Function<IntStream, OptionalInt> overDays)
        implements Widget {
    private static final int TENTHS = 10;
    private static final int LARGEST = 9;

    /** How many pots are in bloom, on the fullest day. */
    static DigitRow pots(RulerLayout ruler, Ribbon ribbon) {
        return new DigitRow(ruler, ribbon, ribbon::pots, IntStream::max);
    }

    /** How likely it is that one is, in tenths, on the least sure day; what is sure is nine, too. */
    static DigitRow chances(RulerLayout ruler, Ribbon ribbon) {
        return new DigitRow(
                ruler, ribbon, day -> Math.min(LARGEST, (int) (ribbon.chance(day) * TENTHS)), IntStream::min);
    }

    @Override
    public void render(Rect line, Cells cells) {
        Cells drawn = cells.within(line);
        for (int cell = 0; cell < ruler.cells(); cell++) {
            int column = line.column() + ruler.column(cell);
            IntStream figures = BloomRow.counting(ribbon, BloomRow.days(ruler, cell)).stream()
                    .mapToInt(of);
            overDays.apply(figures)
                    .ifPresent(figure -> drawn.put(
                            column,
                            line.row(),
                            figure > LARGEST ? "+" : Integer.toString(figure),
                            figure == 0 ? Style.RUST : Style.INK));
        }
    }
}
