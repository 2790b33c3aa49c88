// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.time.ZoneId;
import sillbook.chart.Days;
import sillbook.chart.RulerLayout;
import sillbook.chart.TimeAxis;
import sillbook.ui.screen.State;

/** How much time the chart of a place shows: the season under the ruler, or less on an axis of its own. */
enum Zoom {
    SEASON("season", 0, 0, false),
    MONTH("month", 26, 7, false),
    WEEK("week", 7, 2, true),
    DAYS("2 days", 2, 1, true);

    private static final int FOLD = 1;
    /** Parts a day is cut into, so that each begins on a round hour. */
    private static final int[] PARTS_A_DAY = {1, 2, 3, 4, 6, 8, 12, 24, 48};

    private final String words;
    private final int leastDays;
    private final int daysAPress;
    private final boolean isWithinDays;

    Zoom(String words, int leastDays, int daysAPress, boolean isWithinDays) {
        this.words = words;
        this.leastDays = leastDays;
        this.daysAPress = daysAPress;
        this.isWithinDays = isWithinDays;
    }

    /** As the title of the chart says it. */
    String words() {
        return words;
    }

    int daysAPress() {
        return daysAPress;
    }

    /** Whether it shows how the hours of a day differ, for which the sums of days are too coarse. */
    boolean isWithinDays() {
        return isWithinDays;
    }

    /** One step nearer; after the nearest the season again. */
    Zoom next() {
        return switch (this) {
            case SEASON -> MONTH;
            case MONTH -> WEEK;
            case WEEK -> DAYS;
            case DAYS -> SEASON;
        };
    }

    /**
     * The axis of a page so wide.
     *
     * @param last the last day that is shown where the chart has its own axis
     */
    TimeAxis axis(State state, int columns, LocalDate last) {
        ZoneId zone = state.journal().settings().zone();
        RulerLayout ruler = state.timescale().ruler(state, columns);
        if (this == SEASON) {
            return TimeAxis.of(ruler, zone);
        }
        int room = Math.max(leastDays, columns - ruler.leftColumns() - FOLD);
        int partsADay = partsADay(room);
        int days = room / partsADay;
        Days shown = Days.of(last.minusDays(days - 1L), days);
        return TimeAxis.of(shown, partsADay, state.shown().today(), ruler.leftColumns(), zone);
    }

    /** The finest cut with which the fewest days that are wanted find room. */
    private int partsADay(int room) {
        int finest = 1;
        for (int parts : PARTS_A_DAY) {
            finest = parts * leastDays <= room ? parts : finest;
        }
        return finest;
    }
}
