// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;

/**
 * The day of Easter Sunday, as a day of the Gregorian calendar.
 *
 * <p>The Western one is the Gregorian computus in the form published without author's name in Nature, 20 April 1876,
 * and printed by Jean Meeus in Astronomical Algorithms, chapter 8; the Orthodox one is Meeus's Julian form of the same
 * chapter, carried over into the Gregorian calendar. The letters there have names here.
 */
final class Easter {
    private static final int FIRST_YEAR = 1583;
    private static final int LAST_YEAR = 9999;

    private Easter() {}

    static LocalDate western(int year) {
        check(year);
        int golden = year % 19;
        int century = year / 100;
        int ofCentury = year % 100;
        int moonShift = (century - (century + 8) / 25 + 1) / 3;
        int fullMoon = (19 * golden + century - century / 4 - moonShift + 15) % 30;
        int toSunday = (32 + 2 * (century % 4) + 2 * (ofCentury / 4) - fullMoon - ofCentury % 4) % 7;
        int weekBack = (golden + 11 * fullMoon + 22 * toSunday) / 451;
        return march22(year).plusDays(fullMoon + toSunday - 7L * weekBack);
    }

    static LocalDate orthodox(int year) {
        check(year);
        int fullMoon = (19 * (year % 19) + 15) % 30;
        int toSunday = (2 * (year % 4) + 4 * (year % 7) - fullMoon + 34) % 7;
        int julianLag = year / 100 - year / 400 - 2;
        return march22(year).plusDays(fullMoon + toSunday + (long) julianLag);
    }

    /** The earliest day Easter can fall on; both formulas count from it. */
    private static LocalDate march22(int year) {
        return LocalDate.of(year, 3, 22);
    }

    private static void check(int year) {
        if (year < FIRST_YEAR || year > LAST_YEAR) {
            throw new IllegalArgumentException(
                    "Easter is reckoned for " + FIRST_YEAR + " to " + LAST_YEAR + ", not for " + year);
        }
    }
}
