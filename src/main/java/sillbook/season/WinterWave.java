// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.soil.YearlyWave;

/**
 * A yearly wave laid on one winter.
 *
 * @param coldest when it is lowest, in days since 1 January 1970 with their fraction
 */
public record WinterWave(YearlyWave wave, double coldest) {

    /** The air over a season, whose lowest lies in the twelve months from its first day on. */
    static WinterWave from(LocalDate firstDay, YearlyWave air) {
        double newYear = firstDay.withDayOfYear(1).toEpochDay();
        double inYear = newYear + air.coldest();
        return new WinterWave(air, inYear < firstDay.toEpochDay() ? inYear + YearlyWave.YEAR : inYear);
    }

    /** What became of it in the ground: smaller and so many days later. */
    WinterWave later(YearlyWave there) {
        double lag = there.coldest() - wave.coldest();
        return new WinterWave(there, coldest + (lag < 0 ? lag + YearlyWave.YEAR : lag));
    }

    public LocalDate coldestDay() {
        return day(coldest);
    }

    /** The mean of a day, as it is at noon. */
    public double on(LocalDate day) {
        double noon = day.toEpochDay() + 0.5;
        return wave.on(wave.coldest() + noon - coldest);
    }

    /** The days on which it is so cold or colder; empty where it never is. */
    public Optional<DaySpan> upTo(double celsius) {
        double days = wave.daysUpTo(celsius);
        return days <= 0 ? Optional.empty() : Optional.of(span(coldest - days / 2, coldest + days / 2));
    }

    /** The days between two temperatures: in one stretch, or in two about a colder one. */
    public List<DaySpan> between(double low, double high) {
        double outer = wave.daysUpTo(high) / 2;
        double inner = wave.daysUpTo(low) / 2;
        if (outer <= inner) {
            return List.of();
        }
        return inner == 0
                ? List.of(span(coldest - outer, coldest + outer))
                : List.of(span(coldest - outer, coldest - inner), span(coldest + inner, coldest + outer));
    }

    private static DaySpan span(double from, double to) {
        return new DaySpan(day(from), day(to));
    }

    private static LocalDate day(double epochDay) {
        return LocalDate.ofEpochDay((long) Math.floor(epochDay));
    }
}
