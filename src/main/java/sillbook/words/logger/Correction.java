// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sillbook.model.LoggerFormat;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Counts;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.Temperatures;
import sillbook.words.Terms;
import sillbook.words.logger.UnderstoodWords.Topic;

/**
 * Puts right one thing that a thermometer's file was understood as, by words.
 *
 * @param topic what they are about
 * @param told what was said before, which stands where these words do not touch it
 */
public record Correction(Topic topic, LoggerFormat told) {
    private static final Pattern COLUMN =
            Pattern.compile("(?:column ?)?(?:0*([1-9]\\d{0,2}))?(?:,? ?(?:in )?([a-zA-Z]+))?");

    /** What can be written, and an example of it. */
    public List<String> advice() {
        return switch (topic) {
            case LAYOUT ->
                List.of(
                        "What parts the columns, and the decimal sign: semicolons, decimal comma.",
                        "Commas, semicolons or tabs; decimal point or decimal comma.");
            case INSTANT ->
                List.of(
                        "The order of its dates: dmy, mdy or ymd.",
                        "d stands for the day, m for the month, y for the year.");
            case CLOCK ->
                List.of(
                        "The zone of its clock: a name, as Europe/Vienna, which knows summer time;",
                        "+01:00, which knows none; or UTC.");
            case READING ->
                List.of("The column of the temperature, and its unit: column 3, F.", "Or one of the two alone.");
            case DEVICE -> List.of("Whose readings: its name, as the file has it.", "");
            case SUSPICIOUS ->
                List.of(
                        "What else can hardly be true of it: 0, 25.5.",
                        "85 C, -127 C, -999 and jumps that no room makes are marked anyway.");
        };
    }

    /** What is said of the file with these words. */
    public Heard<LoggerFormat> read(String words) {
        String said = words.strip();
        return switch (topic) {
            case LAYOUT -> layout(said);
            case INSTANT -> FormatWords.DATES.parse(said).map(told::withDates);
            case CLOCK -> FormatWords.zone(said).map(told::withZone);
            case READING -> reading(said);
            case DEVICE -> Heard.as(told.withDevice(said));
            case SUSPICIOUS -> suspicious(said);
        };
    }

    private Heard<LoggerFormat> layout(String said) {
        Heard<LoggerFormat> format = Heard.as(told);
        for (String part : said.split("\\s*,\\s+|\\s*;\\s+|\\s+and\\s+", -1)) {
            format = format.then(sofar -> part(sofar, part.strip()));
        }
        return format;
    }

    private static Heard<LoggerFormat> part(LoggerFormat sofar, String part) {
        String sign = part.replaceFirst("(?i)^decimal ", "");
        return sign.equals(part)
                ? FormatWords.SEPARATORS
                        .parse(part.replaceFirst("(?i) between$", ""))
                        .map(sofar::withSeparator)
                : FormatWords.DECIMALS.parse(sign).map(sofar::withDecimalSign);
    }

    private Heard<LoggerFormat> reading(String said) {
        return Groups.of(COLUMN, said)
                .filter(parts -> !said.isEmpty())
                .map(this::reading)
                .orElseGet(() -> Heard.not(
                        "a column, as 3, F", "'" + said + "' is no column and no unit. Write it as column 3, F."));
    }

    private Heard<LoggerFormat> reading(Groups parts) {
        LoggerFormat format = parts.has(1) ? told.withColumn(parts.number(1)) : told;
        if (!parts.has(2)) {
            return Heard.as(format);
        }
        Heard<TemperatureUnit> unit = Terms.TEMPERATURE_UNITS.parse(parts.text(2));
        return unit.map(format::withUnit);
    }

    private Heard<LoggerFormat> suspicious(String said) {
        Heard<Set<Integer>> all = Heard.as(Set.of());
        for (String one : said.split(",\\s*", -1)) {
            all = all.then(sofar -> Temperatures.parse(one).map(temperature -> {
                Set<Integer> more = new HashSet<>(sofar);
                more.add(temperature.milli());
                return more;
            }));
        }
        return all.map(told::withSuspicious);
    }

    /** What the field begins with: what was found, as it would be written. */
    public String before(Understood understood) {
        Stream<String> layout = Stream.of(
                FormatWords.SEPARATORS.say(understood.separator().value()),
                "decimal " + FormatWords.DECIMALS.say(understood.decimalSign().value()));
        return switch (topic) {
            case LAYOUT -> String.join(", ", layout.toList());
            case INSTANT ->
                understood
                        .dates()
                        .order()
                        .map(order -> FormatWords.DATES.say(order.value()))
                        .orElse("");
            case CLOCK -> FormatWords.say(understood.clock().zone().value());
            case READING ->
                understood
                        .temperature()
                        .map(column -> "column " + column.number() + ", "
                                + Temperatures.unit(understood.unit().value()))
                        .orElse("");
            case DEVICE -> understood.device().orElse("");
            case SUSPICIOUS ->
                String.join(
                        ", ",
                        told.over(understood.toldBefore()).suspicious().stream()
                                .map(milli -> Temperatures.number(milli / 1000.0, TemperatureUnit.CELSIUS))
                                .toList());
        };
    }

    /** The words between which one has to choose, where it is so. */
    public Optional<String> choices(Understood understood) {
        List<String> orders = new UnderstoodWords(understood).ordersTyped();
        return topic == Topic.INSTANT && orders.size() > 1
                ? Optional.of("It can be " + Counts.or(orders) + ".")
                : Optional.empty();
    }
}
