// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.MonthDay;
import sillbook.model.Season;
import sillbook.reckon.dates.Window;

/**
 * When bulbs are potted that nobody wished for a day, counted from the season's first day so that it holds on both
 * halves of the earth.
 *
 * <p>In the north: September for the end of December, October for February, November for March and April (Cornell
 * Cooperative Extension, Oneida County, 2018), so from early September, likely in the middle of October, to the end of
 * November; kinds without cold in the middle of November for Christmas (a consumers' association's advice), later ones
 * to the end of February (common practice).
 */
enum PottingTime {
    WITH_COLD(9, 15, 22),
    WITHOUT_COLD(9, 20, 34);

    private final int fromWeek;
    private final int likelyWeek;
    private final int lastWeek;

    PottingTime(int fromWeek, int likelyWeek, int lastWeek) {
        this.fromWeek = fromWeek;
        this.likelyWeek = likelyWeek;
        this.lastWeek = lastWeek;
    }

    Window in(Season season, MonthDay seasonStart) {
        LocalDate first = season.firstDay(seasonStart);
        return new Window(first.plusWeeks(fromWeek), first.plusWeeks(likelyWeek), first.plusWeeks(lastWeek));
    }
}
