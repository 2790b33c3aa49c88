// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import sillbook.model.LoggerFormat;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Counts;
import sillbook.words.Temperatures;
import sillbook.words.Terms;
import sillbook.words.logger.FormatWords;
import sillbook.words.logger.Understood;
import sillbook.words.logger.Understood.Question;
import sillbook.words.logger.UnderstoodWords;

/** The options that say how a thermometer's file is to be read, where it does not say so itself. */
final class LoggerOptions {
    @Option(
            names = "--dates",
            paramLabel = "ORDER",
            description = "The order of its dates: dmy, mdy or ymd. Asked for where no date tells.")
    private Optional<String> dates = Optional.empty();

    @Option(names = "--column", paramLabel = "N", description = "The column of the temperature, counted from 1.")
    private Optional<Integer> column = Optional.empty();

    @Option(
            names = "--device",
            paramLabel = "NAME",
            description = "Whose readings, where the file has those of several.")
    private Optional<String> device = Optional.empty();

    @Option(names = "--unit", paramLabel = "UNIT", description = "C or F, whatever the file says.")
    private Optional<String> unit = Optional.empty();

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            description =
                    "The zone of its clock: +01:00 where it knows no summer time, UTC, or a name as Europe/Vienna.")
    private Optional<String> zone = Optional.empty();

    @Option(
            names = "--separator",
            paramLabel = "SIGN",
            description = "What parts its columns: comma, semicolon or tab.")
    private Optional<String> separator = Optional.empty();

    @Option(names = "--decimal", paramLabel = "SIGN", description = "Its decimal sign: point or comma.")
    private Optional<String> decimal = Optional.empty();

    @Option(
            names = "--suspicious",
            paramLabel = "T,T",
            description = "Temperatures that can hardly be true of it, beside 85 C, -127 C and -999.")
    private Optional<String> suspicious = Optional.empty();

    /** Whether any of them is given. */
    boolean areGiven() {
        return Stream.of(dates, column, device, unit, zone, separator, decimal, suspicious)
                .anyMatch(Optional::isPresent);
    }

    /**
     * What they say.
     *
     * @throws Misused when one of them cannot be read
     */
    LoggerFormat format() {
        if (column.filter(number -> number < 1).isPresent()) {
            throw new Misused("There is no column " + column.get() + ". Columns are counted from 1.");
        }
        return new LoggerFormat(
                separator.map(text -> Given.read(FormatWords.SEPARATORS.parse(text))),
                decimal.map(text -> Given.read(FormatWords.DECIMALS.parse(text))),
                dates.map(text -> Given.read(FormatWords.DATES.parse(text))),
                unit.map(LoggerOptions::unit),
                zone.map(text -> Given.read(FormatWords.zone(text))),
                column,
                device,
                suspicious.map(LoggerOptions::temperatures).orElse(Set.of()));
    }

    /** What nobody may guess of a file, each with the option that says it. */
    static List<String> asked(Understood understood) {
        UnderstoodWords words = new UnderstoodWords(understood);
        return understood.questions().stream()
                .map(question -> words.asks(question) + " " + advice(question, words))
                .toList();
    }

    private static String advice(Question question, UnderstoodWords words) {
        return switch (question) {
            case DATES ->
                "Say which: "
                        + Counts.or(words.ordersTyped().stream()
                                .map(order -> "--dates " + order)
                                .toList())
                        + ".";
            case COLUMN -> "Say which: --column and its number.";
            case DEVICE -> "Say whose: --device and its name.";
        };
    }

    private static TemperatureUnit unit(String text) {
        return Given.read(Terms.TEMPERATURE_UNITS.parse(text));
    }

    private static Set<Integer> temperatures(String text) {
        return Stream.of(text.split(",", -1))
                .map(one -> Given.read(Temperatures.parse(one)).milli())
                .collect(Collectors.toSet());
    }
}
