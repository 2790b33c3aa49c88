// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import sillbook.chart.TimeAxis;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.words.Days;

/** The days under a chart that has an axis of its own, as much of each as there is room for. */
record ChartAxis(TimeAxis axis) implements Widget {
    private static final int FULL = 11;
    private static final int SHORT = 4;
    private static final int WITH_NOON = 20;
    private static final String NOON = "12:00";

    @Override
    public void render(Rect line, Cells cells) {
        if (axis.count() == 0) {
            return;
        }
        LocalDate first = LocalDate.ofInstant(axis.from(0), axis.zone());
        LocalDate after = LocalDate.ofInstant(axis.to(axis.count() - 1), axis.zone());
        int columns = axis.count()
                / (int) Math.max(
                        1,
                        Duration.between(axis.from(0), axis.to(axis.count() - 1))
                                .toDays());
        first.datesUntil(after).forEach(day -> {
            label(day, columns).ifPresent(text -> put(axis.part(day), text, line, cells));
            if (columns >= WITH_NOON) {
                Instant noon = day.atTime(12, 0).atZone(axis.zone()).toInstant();
                put(axis.part(noon), NOON, line, cells);
            }
        });
    }

    /** The whole day, or its name alone, or only Mondays by date. */
    private static Optional<String> label(LocalDate day, int columns) {
        if (columns >= FULL) {
            return Optional.of(Days.day(day));
        }
        if (columns >= SHORT) {
            return Optional.of(Days.weekday(day));
        }
        return day.getDayOfWeek() == DayOfWeek.MONDAY ? Optional.of(Days.date(day)) : Optional.empty();
    }

    /** What would be cut off at the end of the page is left out. */
    private void put(OptionalInt part, String text, Rect line, Cells cells) {
        if (part.isPresent() && axis.column(part.getAsInt()) + Width.of(text) <= line.columns()) {
            cells.put(line.column() + axis.column(part.getAsInt()), line.row(), text, Style.PENCIL);
        }
    }
}
