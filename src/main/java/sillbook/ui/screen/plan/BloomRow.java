// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.chart.RulerLayout;
import sillbook.plan.Ribbon;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;

/**
 * A row of flowers under the months: solid where something is in bloom in nine winters of ten, dotted where it is less sure, a ring where it
 * is wished for and there is too little.
 *
 * @param least how many pots there should be on a wished day
 */
record BloomRow(RulerLayout ruler, Ribbon ribbon, int least) implements Widget {
    static final double SURE = 0.9;

    @Override
    public void render(Rect line, Cells cells) {
        Cells drawn = cells.within(line);
        for (int cell = 0; cell < ruler.cells(); cell++) {
            int column = line.column() + ruler.column(cell);
            sign(days(ruler, cell)).ifPresent(sign -> drawn.put(column, line.row(), sign, style(sign)));
        }
    }

    /** The days of a cell. */
    static List<LocalDate> days(RulerLayout ruler, int cell) {
        return ruler.days(cell)
                .fromInclusive()
                .datesUntil(ruler.days(cell).toExclusive())
                .toList();
    }

    /** Of some days those that count: the wished ones, else those with a flower. */
    static List<LocalDate> counting(Ribbon ribbon, List<LocalDate> days) {
        List<LocalDate> wished = days.stream().filter(ribbon::isWished).toList();
        return wished.isEmpty()
                ? days.stream().filter(day -> ribbon.pots(day) > 0).toList()
                : wished;
    }

    private Optional<Sign> sign(List<LocalDate> days) {
        List<LocalDate> counting = counting(ribbon, days);
        boolean isShort = counting.stream().anyMatch(day -> ribbon.isWished(day) && ribbon.pots(day) < least);
        if (isShort) {
            return Optional.of(Sign.GAP);
        }
        boolean isSure = counting.stream().allMatch(day -> ribbon.chance(day) >= SURE);
        return counting.isEmpty() ? Optional.empty() : Optional.of(isSure ? Sign.BLOOM : Sign.BLOOM_FORETOLD);
    }

    private static Style style(Sign sign) {
        return switch (sign) {
            case GAP -> Style.RUST;
            case BLOOM -> Style.of(Role.PETAL).withBold();
            default -> Style.of(Role.PETAL);
        };
    }
}
