// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

/**
 * A date, a time of day or both as files write them, read from their bytes. The numbers of the date are kept as they stand: which is the day and
 * which the month may be told by other lines only. Holds the last one that was read, so that none is made for each line.
 */
final class Moment {
    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final int HALF_DAY = 12;
    private static final int THOUSANDTHS_DIGITS = 13;

    /** From 1990 to 2100: what lies outside is some other number. */
    private static final long EARLIEST_UNIX = 631_152_000;

    private static final long LATEST_UNIX = 4_102_444_800L;

    private byte[] bytes = {};
    private int at;
    private int end;
    private int found;

    private int first;
    private int second;
    private int third;
    private boolean isSelfEvident;
    private int secondOfDay;
    private boolean hasOffset;
    private int offset;
    private boolean isHalfDays;
    private long unix;
    private boolean isDated;

    /** Reads a date and a time of day, and perhaps how far the clock is from Greenwich. */
    boolean readBoth(byte[] cell, int from, int to) {
        begin(cell, from, to);
        isDated = true;
        return date() && between() && time() && at == end;
    }

    /** Reads a date alone. */
    boolean readDate(byte[] cell, int from, int to) {
        begin(cell, from, to);
        isDated = true;
        return date() && at == end;
    }

    /** Reads a time of day alone, and leaves the date that was read before. */
    boolean readTime(byte[] cell, int from, int to) {
        begin(cell, from, to);
        return time() && at == end;
    }

    /** Reads seconds since 1970, or thousandths of them, and leaves all else. */
    boolean readUnix(byte[] cell, int from, int to) {
        begin(cell, from, to);
        long value = 0;
        while (at < end && isDigit(bytes[at]) && at - from < THOUSANDTHS_DIGITS) {
            value = value * 10 + bytes[at++] - '0';
        }
        boolean inThousandths = at - from == THOUSANDTHS_DIGITS;
        passFraction();
        unix = inThousandths ? value / 1000 : value;
        hasOffset = true;
        isDated = false;
        return at == end && unix >= EARLIEST_UNIX && unix < LATEST_UNIX;
    }

    /** Reads how far a clock is from Greenwich, and leaves all else. */
    boolean readOffset(byte[] cell, int from, int to) {
        begin(cell, from, to);
        return offset() && at == end && hasOffset;
    }

    private void begin(byte[] cell, int from, int to) {
        bytes = cell;
        at = from;
        end = to;
        hasOffset = false;
        offset = 0;
    }

    private boolean date() {
        int digits = number();
        if (digits == 8) {
            return compact();
        }
        if (digits == 0) {
            return monthFirst();
        }
        first = found;
        if (!partOfDate()) {
            return false;
        }
        int middle = number();
        isSelfEvident = digits == 4;
        if (middle == 0 && isMonth()) {
            return dayNameYear(digits == 4);
        }
        second = found;
        return middle > 0 && middle <= 2 && partOfDate() && lastOfDate(digits);
    }

    private boolean lastOfDate(int firstDigits) {
        int digits = number();
        third = found;
        return firstDigits == 4 ? digits > 0 && digits <= 2 : firstDigits <= 2 && (digits == 2 || digits == 4);
    }

    /** {@code 20261113}. */
    private boolean compact() {
        third = found % 100;
        second = found / 100 % 100;
        first = found / 10_000;
        isSelfEvident = true;
        return true;
    }

    /** {@code 13 Nov 2026} or {@code 2026-Nov-13}, at the month. */
    private boolean dayNameYear(boolean isYearFirst) {
        int month = month();
        if (month == 0 || !partOfDate()) {
            return false;
        }
        int digits = number();
        int last = found;
        int day = isYearFirst ? last : first;
        int year = isYearFirst ? first : fullYear(last, digits);
        return digits > 0 && digits <= 4 && evident(year, month, day);
    }

    /** {@code Nov 13, 2026}, at its beginning. */
    private boolean monthFirst() {
        int month = month();
        if (month == 0 || !partOfDate() || number() == 0) {
            return false;
        }
        int day = found;
        if (!partOfDate()) {
            return false;
        }
        int digits = number();
        return digits > 0 && digits <= 4 && evident(fullYear(found, digits), month, day);
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

    private boolean isMonth() {
        return at < end && Character.isLetter(bytes[at]);
    }

    /** The month of a name or its first three letters, from 1; 0 where it is none. */
    private int month() {
        int start = at;
        StringBuilder letters = new StringBuilder(3);
        while (at < end && (bytes[at] | 0x20) >= 'a' && (bytes[at] | 0x20) <= 'z') {
            letters.append((char) (bytes[at++] | 0x20));
        }
        if (at - start < 3) {
            return 0;
        }
        int place = MONTHS.indexOf(letters.substring(0, 3));
        return place % 3 == 0 ? place / 3 + 1 : 0;
    }

    /** Goes past what parts the numbers of a date. */
    private boolean partOfDate() {
        int start = at;
        while (at < end && isPart(bytes[at])) {
            at++;
        }
        return at > start && at < end;
    }

    private static boolean isPart(byte character) {
        return character == '.' || character == '/' || character == '-' || character == ' ' || character == ',';
    }

    /** Goes past what parts the date from the time of day. */
    private boolean between() {
        int start = at;
        while (at < end && (bytes[at] == ' ' || bytes[at] == 'T' || bytes[at] == ',' || bytes[at] == '_')) {
            at++;
        }
        return at > start;
    }

    private boolean time() {
        int hourDigits = number();
        int hour = found;
        if (hourDigits == 0 || hourDigits > 2 || !isColon()) {
            return false;
        }
        if (number() != 2) {
            return false;
        }
        int minute = found;
        int second = 0;
        if (isColon()) {
            if (number() != 2) {
                return false;
            }
            second = found;
            passFraction();
        }
        return ofDay(hour, minute, second) && offset();
    }

    private boolean isColon() {
        if (at < end && bytes[at] == ':') {
            at++;
            return true;
        }
        return false;
    }

    /** Parts of a second are let go: a reading's instant is kept in seconds. */
    private void passFraction() {
        if (at + 1 < end && (bytes[at] == '.' || bytes[at] == ',') && isDigit(bytes[at + 1])) {
            at++;
            while (at < end && isDigit(bytes[at])) {
                at++;
            }
        }
    }

    private boolean ofDay(int hour, int minute, int second) {
        int half = half();
        isHalfDays = half >= 0;
        boolean inRange =
                isHalfDays ? hour >= 1 && hour <= HALF_DAY : hour < 24 || (hour == 24 && minute + second == 0);
        int from = isHalfDays ? hour % HALF_DAY + half : hour;
        secondOfDay = (from * 60 + minute) * 60 + second;
        return inRange && minute < 60 && second <= 60;
    }

    /** The hours that AM or PM adds: 0, 12, or -1 where neither stands there. */
    private int half() {
        int mark = at;
        passBlanks();
        int letter = at < end ? bytes[at] | 0x20 : 0;
        int rest = at + 1;
        if (rest < end && bytes[rest] == '.') {
            rest++;
        }
        if ((letter == 'a' || letter == 'p') && rest < end && (bytes[rest] | 0x20) == 'm') {
            at = rest + 1 < end && bytes[rest + 1] == '.' ? rest + 2 : rest + 1;
            return letter == 'a' ? 0 : HALF_DAY;
        }
        at = mark;
        return -1;
    }

    private void passBlanks() {
        while (at < end && bytes[at] == ' ') {
            at++;
        }
    }

    /** {@code Z}, {@code UTC}, {@code GMT+1}, {@code +01:00}, {@code -0600} or nothing. */
    private boolean offset() {
        passBlanks();
        if (at == end) {
            return true;
        }
        boolean isNamed = isNamedGreenwich();
        hasOffset = true;
        offset = 0;
        if (at == end) {
            return isNamed;
        }
        boolean isLong = Glyphs.isLongMinus(bytes, at, end);
        boolean isWest = isLong || bytes[at] == '-';
        if (!isWest && bytes[at] != '+') {
            return false;
        }
        at += isLong ? Glyphs.LONG_MINUS_BYTES : 1;
        return distance(isWest);
    }

    private boolean isNamedGreenwich() {
        if (end - at == 1 && (bytes[at] | 0x20) == 'z') {
            at++;
            return true;
        }
        if (end - at >= 3 && (isWord("utc") || isWord("gmt"))) {
            at += 3;
            return true;
        }
        return false;
    }

    private boolean isWord(String word) {
        for (int i = 0; i < word.length(); i++) {
            if ((bytes[at + i] | 0x20) != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private boolean distance(boolean isWest) {
        int digits = number();
        int hours = digits > 2 ? found / 100 : found;
        int minutes = digits > 2 ? found % 100 : 0;
        if (digits <= 2 && isColon()) {
            if (number() != 2) {
                return false;
            }
            minutes = found;
        }
        offset = (hours * 60 + minutes) * 60 * (isWest ? -1 : 1);
        return digits > 0 && digits <= 4 && hours <= 18 && minutes < 60 && hours * 60 + minutes <= 18 * 60;
    }

    /** Reads digits into {@code found}, and gives how many there are. */
    private int number() {
        int start = at;
        int value = 0;
        while (at < end && isDigit(bytes[at]) && at - start < 9) {
            value = value * 10 + bytes[at++] - '0';
        }
        found = value;
        return at - start;
    }

    private static boolean isDigit(byte character) {
        return character >= '0' && character <= '9';
    }

    /** Whether it is a date, and not seconds. */
    boolean isDated() {
        return isDated;
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

    /** Whether the date can be read in one way only, which is then year, month, day: its year has four digits in front, or its month a name. */
    boolean isSelfEvident() {
        return isSelfEvident;
    }

    int secondOfDay() {
        return secondOfDay;
    }

    boolean hasOffset() {
        return hasOffset;
    }

    /** Seconds east of Greenwich. */
    int offsetSeconds() {
        return offset;
    }

    /** Seconds since 1970-01-01T00:00Z. */
    long unix() {
        return unix;
    }

    /** Whether the clock goes to twelve only. */
    boolean isHalfDays() {
        return isHalfDays;
    }
}
