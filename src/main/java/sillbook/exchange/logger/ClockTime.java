// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/** A time of day, and how far its clock is from Greenwich where that stands behind it. Holds the last one that was read. */
final class ClockTime {
    private static final int HALF_DAY = 12;
    private static final int FARTHEST_MINUTES = 18 * 60;

    private int secondOfDay;
    private boolean isHalfDays;
    private boolean hasOffset;
    private int offset;

    boolean read(Scan scan) {
        int hourDigits = scan.number();
        int hour = scan.found();
        if (hourDigits == 0 || hourDigits > 2 || !scan.passes(':') || scan.number() != 2) {
            return false;
        }
        int minute = scan.found();
        int second = 0;
        if (scan.passes(':')) {
            if (scan.number() != 2) {
                return false;
            }
            second = scan.found();
            passFraction(scan);
        }
        return ofDay(hour, minute, second, half(scan)) && readOffset(scan);
    }

    /** Parts of a second are let go: a reading's instant is kept in seconds. */
    static void passFraction(Scan scan) {
        if ((scan.here() == '.' || scan.here() == ',') && Scan.isDigit(scan.ahead(1))) {
            scan.pass(1);
            scan.passDigits();
        }
    }

    private boolean ofDay(int hour, int minute, int second, int half) {
        isHalfDays = half >= 0;
        boolean inRange =
                isHalfDays ? hour >= 1 && hour <= HALF_DAY : hour < 24 || (hour == 24 && minute + second == 0);
        int from = isHalfDays ? hour % HALF_DAY + half : hour;
        secondOfDay = (from * 60 + minute) * 60 + second;
        return inRange && minute < 60 && second <= 60;
    }

    /** The hours that AM or PM adds, with or without points: 0, 12, or -1 where neither stands there. */
    private static int half(Scan scan) {
        int blanks = scan.passBlanks();
        int letter = scan.here() | 0x20;
        int rest = scan.ahead(1) == '.' ? 2 : 1;
        if ((letter == 'a' || letter == 'p') && (scan.ahead(rest) | 0x20) == 'm') {
            scan.pass(scan.ahead(rest + 1) == '.' ? rest + 2 : rest + 1);
            return letter == 'a' ? 0 : HALF_DAY;
        }
        scan.pass(-blanks);
        return -1;
    }

    /** {@code Z}, {@code UTC}, {@code GMT+1}, {@code +01:00}, {@code -0600} or nothing. */
    boolean readOffset(Scan scan) {
        hasOffset = false;
        offset = 0;
        scan.passBlanks();
        if (scan.isAtEnd()) {
            return true;
        }
        boolean isNamed = passGreenwich(scan);
        hasOffset = true;
        if (scan.isAtEnd()) {
            return isNamed;
        }
        int sign = scan.sign();
        return sign != 0 && distance(scan, sign);
    }

    private static boolean passGreenwich(Scan scan) {
        if (scan.left() == 1 && scan.isWord("z")) {
            scan.pass(1);
            return true;
        }
        boolean isNamed = scan.isWord("utc") || scan.isWord("gmt");
        scan.pass(isNamed ? "utc".length() : 0);
        return isNamed;
    }

    private boolean distance(Scan scan, int sign) {
        int digits = scan.number();
        int hours = digits > 2 ? scan.found() / 100 : scan.found();
        int minutes = digits > 2 ? scan.found() % 100 : 0;
        if (digits <= 2 && scan.passes(':')) {
            if (scan.number() != 2) {
                return false;
            }
            minutes = scan.found();
        }
        offset = sign * (hours * 60 + minutes) * 60;
        return digits > 0 && digits <= 4 && minutes < 60 && hours * 60 + minutes <= FARTHEST_MINUTES;
    }

    int secondOfDay() {
        return secondOfDay;
    }

    /** Whether the clock goes to twelve only. */
    boolean isHalfDays() {
        return isHalfDays;
    }

    boolean hasOffset() {
        return hasOffset;
    }

    /** Seconds east of Greenwich. */
    int offsetSeconds() {
        return offset;
    }
}
