// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.words.Heard;
import sillbook.words.Vocabulary;

/** The words in which the grower says how a thermometer's file is to be read. */
public final class FormatWords {
    /** As they are typed: {@code dmy}. */
    public static final Vocabulary<DateOrder> DATES = Vocabulary.<DateOrder>of("order of dates")
            .with(DateOrder.DAY_MONTH_YEAR, "dmy", "day month year", "day.month.year")
            .with(DateOrder.MONTH_DAY_YEAR, "mdy", "month day year", "month.day.year")
            .with(DateOrder.YEAR_MONTH_DAY, "ymd", "year month day", "year.month.day");

    public static final Vocabulary<Separator> SEPARATORS = Vocabulary.<Separator>of("separator")
            .with(Separator.COMMA, "commas", "comma", ",")
            .with(Separator.SEMICOLON, "semicolons", "semicolon", ";")
            .with(Separator.TAB, "tabs", "tab", "\t", "\\t");

    public static final Vocabulary<DecimalSign> DECIMALS = Vocabulary.<DecimalSign>of("decimal sign")
            .with(DecimalSign.POINT, "point", "dot", ".")
            .with(DecimalSign.COMMA, "comma", ",");

    private FormatWords() {}

    /** In full: {@code day.month.year}. */
    public static String inFull(DateOrder order) {
        return order.name().toLowerCase(Locale.ROOT).replace('_', '.');
    }

    /** A zone by its distance from Greenwich or its name: {@code +01:00}, {@code UTC-6}, {@code Europe/Vienna}. */
    public static Heard<ZoneId> zone(String text) {
        String said = text.strip().replace('\u2212', '-');
        return zoneOf(said)
                .map(Heard::as)
                .orElseGet(() -> Heard.not(
                        "a zone, as +01:00", "'" + said + "' is no zone. Write it as +01:00, UTC or Europe/Vienna."));
    }

    private static Optional<ZoneId> zoneOf(String said) {
        try {
            ZoneId zone =
                    ZoneId.of(said.replaceFirst("(?i)^(utc|gmt)(?=[+-])", "")).normalized();
            return Optional.of(zone);
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    /** {@code UTC}, {@code +01:00}, {@code Europe/Vienna}. */
    static String say(ZoneId zone) {
        return zone.equals(ZoneOffset.UTC) ? "UTC" : zone.getId();
    }
}
