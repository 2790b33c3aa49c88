// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.exchange.CsvFile;
import sillbook.exchange.logger.LoggerFeed;
import sillbook.exchange.logger.LoggerFile;
import sillbook.exchange.logger.Source;
import sillbook.reckon.cold.Reading;
import sillbook.reckon.cold.Trace;
import sillbook.words.Counts;
import sillbook.words.Warned;
import sillbook.words.list.Table;
import sillbook.words.logger.LeftOut;
import sillbook.words.logger.UnderstoodWords;

/**
 * A file of temperatures that no journal is asked for: a table of the lowest and highest of days or spans, or else the file of a thermometer,
 * read as it would be imported. Where it names no zone its clock is taken to show that of Greenwich.
 *
 * @param options what the grower says of a thermometer's file; where anything is said, it is one
 */
record TemperatureFile(FileIn in, LoggerOptions options) {
    /** What a command that reads one says of it. */
    static final String DESCRIPTION =
            "A thermometer's file: any that has an instant and a temperature in a line. Of days and"
                    + " spans: separated values in UTF-8, the columns named in the first row.";

    private static final double MILLI = 1000;

    /**
     * What was read from it.
     *
     * @param assumed what was taken for granted, a phrase each
     * @param warnings of what was left out
     */
    record Contents(Thermograph thermograph, List<String> assumed, List<Warned> warnings) {
        Contents {
            assumed = List.copyOf(assumed);
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Reads all of it.
     *
     * @throws CouldNot when it cannot be read, or leaves open what nobody may guess
     */
    Contents read() {
        Source source = in.source();
        return options.areGiven()
                ? logged(source)
                : table(source)
                        .map(TemperatureTable::new)
                        .filter(TemperatureTable::isOfLowestAndHighest)
                        .map(TemperatureFile::tabled)
                        .orElseGet(() -> logged(source));
    }

    /** Empty where it is none; what is wrong with a thermometer's file, the one who reads those says. */
    private static Optional<Table> table(Source source) {
        try (InputStream bytes = source.open()) {
            return CsvFile.read(bytes).fold(Optional::of, none -> Optional.empty());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static Contents tabled(TemperatureTable table) {
        Thermograph thermograph = table.read();
        List<Warned> warnings = table.leftOut().isEmpty()
                ? List.of()
                : List.of(LeftOut.withoutValue(Counts.of(table.leftOut().size(), "row")));
        return new Contents(thermograph, table.assumed(), warnings);
    }

    private Contents logged(Source source) {
        LoggerFile file = in.told(LoggerFile.look(source, options.format(), List.of(), ZoneOffset.UTC));
        if (!file.understood().questions().isEmpty()) {
            throw new CouldNot(String.join(" ", LoggerOptions.asked(file.understood())));
        }
        List<Reading> readings = new ArrayList<>();
        try (LoggerFeed feed = file.feed()) {
            while (feed.advance()) {
                if (!feed.isSuspicious()) {
                    readings.add(new Reading(Instant.ofEpochSecond(feed.at()), feed.milli() / MILLI));
                }
            }
            Thermograph thermograph = new Thermograph.OfMoments(
                    Trace.of(readings, Trace.HALF_A_DAY),
                    file.understood().clock().zone().value());
            return new Contents(
                    thermograph, new UnderstoodWords(file.understood()).assumed(), LeftOut.of(feed.counted()));
        }
    }
}
