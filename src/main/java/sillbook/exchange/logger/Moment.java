// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/** An instant as files write it, read from its bytes. Holds the last one that was read, so that none is made for each line. */
final class Moment {
    private static final int THOUSANDTHS_DIGITS = 13;

    /** From 1990 to 2100: what lies outside is some other number. */
    private static final long EARLIEST_UNIX = 631_152_000;

    private static final long LATEST_UNIX = 4_102_444_800L;

    private final Scan scan = new Scan();
    private final DateNumbers date = new DateNumbers();
    private final ClockTime time = new ClockTime();
    private boolean isDated;
    private long unix;

    /** Reads a date and a time of day, and perhaps how far the clock is from Greenwich. */
    boolean readBoth(byte[] cell, int from, int to) {
        scan.begin(cell, from, to);
        isDated = true;
        return date.read(scan) && isParted() && time.read(scan) && scan.isAtEnd();
    }

    /** Goes past what parts the date from the time of day. */
    private boolean isParted() {
        int left = scan.left();
        byte next = scan.here();
        while (next == ' ' || next == 'T' || next == ',' || next == '_') {
            scan.pass(1);
            next = scan.here();
        }
        return scan.left() < left;
    }

    /** Reads a date alone. */
    boolean readDate(byte[] cell, int from, int to) {
        scan.begin(cell, from, to);
        isDated = true;
        return date.read(scan) && scan.isAtEnd();
    }

    /** Reads a time of day alone, and leaves the date that was read before. */
    boolean readTime(byte[] cell, int from, int to) {
        scan.begin(cell, from, to);
        return time.read(scan) && scan.isAtEnd();
    }

    /** Reads how far a clock is from Greenwich, and leaves all else. */
    boolean readOffset(byte[] cell, int from, int to) {
        scan.begin(cell, from, to);
        return time.readOffset(scan) && scan.isAtEnd() && time.hasOffset();
    }

    /** Reads seconds since 1970, or thousandths of them. */
    boolean readUnix(byte[] cell, int from, int to) {
        scan.begin(cell, from, to);
        isDated = false;
        long value = 0;
        while (Scan.isDigit(scan.here()) && scan.left() > to - from - THOUSANDTHS_DIGITS) {
            value = value * 10 + scan.here() - '0';
            scan.pass(1);
        }
        boolean inThousandths = to - from - scan.left() == THOUSANDTHS_DIGITS;
        ClockTime.passFraction(scan);
        unix = inThousandths ? value / 1000 : value;
        return scan.isAtEnd() && unix >= EARLIEST_UNIX && unix < LATEST_UNIX;
    }

    /** Whether it is a date, and not seconds. */
    boolean isDated() {
        return isDated;
    }

    DateNumbers date() {
        return date;
    }

    int secondOfDay() {
        return time.secondOfDay();
    }

    boolean hasOffset() {
        return !isDated || time.hasOffset();
    }

    /** Seconds east of Greenwich. */
    int offsetSeconds() {
        return time.offsetSeconds();
    }

    /** Whether the clock goes to twelve only. */
    boolean isHalfDays() {
        return isDated && time.isHalfDays();
    }

    /** Seconds since 1970-01-01T00:00Z. */
    long unix() {
        return unix;
    }
}
