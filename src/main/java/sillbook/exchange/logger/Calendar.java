// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.time.LocalDate;
import java.time.YearMonth;
import sillbook.model.DateOrder;

/** The three numbers of a date, put in an order. */
final class Calendar {
    /** No date. */
    static final long NONE = Long.MIN_VALUE;

    private static final int LAST_OF_TWO_DIGITS = 68;
    private static final int EARLIEST = 1970;
    private static final int LATEST = 2199;

    private Calendar() {}

    /** Days since 1970-01-01, or {@link #NONE} where the numbers are no date in that order. */
    static long day(DateNumbers date, DateOrder order) {
        if (date.isSelfEvident()) {
            return day(date.first(), date.second(), date.third());
        }
        return switch (order) {
            case DAY_MONTH_YEAR -> day(year(date.third()), date.second(), date.first());
            case MONTH_DAY_YEAR -> day(year(date.third()), date.first(), date.second());
            case YEAR_MONTH_DAY -> date.third() > 99 ? NONE : day(year(date.first()), date.second(), date.third());
        };
    }

    /** Two digits are a year from 1969 to 2068 (as POSIX has it for {@code %y}); more are a year. */
    static int year(int digits) {
        if (digits > 99) {
            return digits;
        }
        return digits <= LAST_OF_TWO_DIGITS ? 2000 + digits : 1900 + digits;
    }

    private static long day(int year, int month, int day) {
        boolean isDate = year >= EARLIEST
                && year <= LATEST
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth();
        return isDate ? LocalDate.of(year, month, day).toEpochDay() : NONE;
    }
}
