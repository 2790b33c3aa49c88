// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;

/**
 * When a pot in the cold has had so many days of it: those that it had by what was read or assumed of them, those to come by how its place
 * has lately been.
 *
 * @param countedTo the day up to which it has been counted, and from which it goes on
 * @param reached of a pot whose cold was read: by which day each whole day of it was had
 */
public record ColdAhead(LocalDate countedTo, ColdCount had, List<LocalDate> reached, ColdPace pace) {
    private static final double ROUNDING = 1e-9;

    public ColdAhead {
        reached = List.copyOf(reached);
    }

    /** The day by which so many days of cold are had. */
    public LocalDate reaches(int days) {
        return days > 0 && days <= reached.size()
                ? reached.get(days - 1)
                : after(days - had.daysColdEnough() - rest(), pace.likely());
    }

    /** What is had of a day that is not whole yet; where nothing was read there is none. */
    private double rest() {
        return reached.isEmpty() ? 0 : had.likely() - had.daysColdEnough();
    }

    private LocalDate after(double daysOfCold, double worth) {
        return countedTo.plusDays((long) Math.ceil(daysOfCold / worth - ROUNDING));
    }

    /** When each end of a need is met. */
    Window of(DayCount need) {
        return new Window(reaches(need.low()), reaches(need.typical()), reaches(need.high()));
    }

    /** Between which days so many days of cold are had: by most that may count and a place at its best, and by the least. */
    public Window between(int days) {
        LocalDate likely = reaches(days);
        if (days <= had.daysColdEnough()) {
            return Window.on(likely);
        }
        LocalDate soonest = after(Math.max(0, days - had.most()), pace.fast());
        LocalDate last = after(days - had.least(), pace.slow());
        return new Window(soonest.isAfter(likely) ? likely : soonest, likely, last.isBefore(likely) ? likely : last);
    }

    /** Whether thermometers have a part in it. */
    public boolean isRead() {
        return had.isRead() || pace.isRead();
    }
}
