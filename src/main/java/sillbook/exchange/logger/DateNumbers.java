// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/**
 * The numbers of a date, as they stand: which is the day and which the month may be told by other lines only. A date that can be read in one
 * way only is given as year, month, day. Holds the last one that was read.
 */
final class DateNumbers {
    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final int LETTERS = 3;

    private int first;
    private int second;
    private int third;
    private boolean isSelfEvident;

    boolean read(Scan scan) {
        int digits = scan.number();
        if (digits == 8) {
            return compact(scan.found());
        }
        if (digits == 0) {
            return monthFirst(scan);
        }
        first = scan.found();
        return isParted(scan) && (isLetter(scan.here()) ? dayNameYear(scan, digits == 4) : numbers(scan, digits));
    }

    private boolean numbers(Scan scan, int firstDigits) {
        int middle = scan.number();
        second = scan.found();
        isSelfEvident = firstDigits == 4;
        if (middle == 0 || middle > 2 || !isParted(scan)) {
            return false;
        }
        int last = scan.number();
        third = scan.found();
        return isSelfEvident ? last > 0 && last <= 2 : firstDigits <= 2 && (last == 2 || last == 4);
    }

    /** {@code 20261113}. */
    private boolean compact(int number) {
        return evident(number / 10_000, number / 100 % 100, number % 100);
    }

    /** {@code 13 Nov 2026} or {@code 2026-Nov-13}, at the month. */
    private boolean dayNameYear(Scan scan, boolean isYearFirst) {
        int number = first;
        int month = month(scan);
        if (month == 0 || !isParted(scan)) {
            return false;
        }
        int digits = scan.number();
        int last = scan.found();
        return digits > 0
                && digits <= 4
                && (isYearFirst ? evident(number, month, last) : evident(fullYear(last, digits), month, number));
    }

    /** {@code Nov 13, 2026}. */
    private boolean monthFirst(Scan scan) {
        int month = month(scan);
        if (month == 0 || !isParted(scan) || scan.number() == 0) {
            return false;
        }
        int day = scan.found();
        if (!isParted(scan)) {
            return false;
        }
        int digits = scan.number();
        return digits > 0 && digits <= 4 && evident(fullYear(scan.found(), digits), month, day);
    }

    private boolean evident(int year, int month, int day) {
        first = year;
        second = month;
        third = day;
        isSelfEvident = true;
        return true;
    }

    private static int fullYear(int year, int digits) {
        return digits > 2 ? year : Calendar.year(year);
    }

    private static boolean isLetter(byte character) {
        return (character | 0x20) >= 'a' && (character | 0x20) <= 'z';
    }

    /** The month of a name or its first three letters, from 1; 0 where it is none. */
    private static int month(Scan scan) {
        StringBuilder letters = new StringBuilder(LETTERS);
        while (isLetter(scan.here())) {
            letters.append((char) (scan.here() | 0x20));
            scan.pass(1);
        }
        int place = letters.length() < LETTERS ? -1 : MONTHS.indexOf(letters.substring(0, LETTERS));
        return place % LETTERS == 0 ? place / LETTERS + 1 : 0;
    }

    /** Goes past what parts the numbers of a date; false where nothing does, or nothing follows. */
    private static boolean isParted(Scan scan) {
        boolean isThere = false;
        while (isPart(scan.here())) {
            scan.pass(1);
            isThere = true;
        }
        return isThere && !scan.isAtEnd();
    }

    private static boolean isPart(byte character) {
        return character == '.' || character == '/' || character == '-' || character == ' ' || character == ',';
    }

    int first() {
        return first;
    }

    int second() {
        return second;
    }

    int third() {
        return third;
    }

    /** Whether it can be read in one way only: its year has four digits in front, or its month a name. */
    boolean isSelfEvident() {
        return isSelfEvident;
    }
}
