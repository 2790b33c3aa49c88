// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sillbook.model.OwnFigure.Range;
import sillbook.words.DayReader;
import sillbook.words.Heard;
import sillbook.words.Temperatures;
import sillbook.words.Weeks;

/** What options were given, read. What cannot be read is {@link Misused}. */
final class Given {
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,9}([.,]\\d{1,9})?");

    private Given() {}

    /** A day as people say it; where the words leave it open, the one to come. */
    static LocalDate dayAhead(String text, LocalDate today) {
        return read(DayReader.ahead(today).parseExact(text));
    }

    /** A day as people say it; where the words leave it open, the nearest. */
    static LocalDate dayNear(String text, LocalDate today) {
        return Stream.of(DayReader.back(today), DayReader.ahead(today))
                .map(reader -> read(reader.parseExact(text)))
                .min((one, other) -> Long.compare(days(one, today), days(other, today)))
                .orElseThrow();
    }

    private static long days(LocalDate day, LocalDate today) {
        return Math.abs(ChronoUnit.DAYS.between(day, today));
    }

    static double weeks(String text) {
        return read(Weeks.parse(text));
    }

    static double days(String text) {
        return read(Weeks.parseDays(text));
    }

    /** A bare number. */
    static double number(String text) {
        if (!NUMBER.matcher(text.strip()).matches()) {
            throw new Misused("'" + text + "' is no number. Write it as 350 or 4.5.");
        }
        return Double.parseDouble(text.strip().replace(',', '.'));
    }

    /** A temperature in C; with {@code F} after it, in that. */
    static double celsius(String text) {
        return read(Temperatures.parse(text)).celsius();
    }

    /** One number of weeks, or three: the least, the usual, the most. */
    static Range range(String text) {
        return range(
                text, "weeks", Stream.of(text.split(",", -1)).map(Given::weeks).toList());
    }

    /** The same of days. */
    static Range daysRange(String text) {
        return range(text, "days", daysList(text));
    }

    /** Numbers of days with commas between. */
    static List<Double> daysList(String text) {
        return Stream.of(text.split(",", -1)).map(Given::days).toList();
    }

    private static Range range(String text, String unit, List<Double> values) {
        if (values.size() == 1) {
            return Range.of(values.get(0));
        }
        if (values.size() != 3) {
            throw new Misused("'" + text + "' is neither one number of " + unit + " nor three. Write 15, or 12,15,17.");
        }
        if (values.get(0) > values.get(1) || values.get(1) > values.get(2)) {
            throw new Misused("'" + text + "' is not in order. Write the least, the usual and the most " + unit + ".");
        }
        return new Range(values.get(0), values.get(1), values.get(2));
    }

    /** What was understood. */
    static <T> T read(Heard<T> heard) {
        return heard.fold(meaning -> meaning, not -> {
            throw new Misused(not.sentence());
        });
    }
}
