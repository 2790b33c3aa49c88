// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;

/**
 * A file as a thermometer might write it, of our own invention, and what is to come of it.
 *
 * @param expected facts by their names
 */
record Fixture(String name, Path file, Map<String, String> expected, List<Taken> readings) {
    static final ZoneId HOME = ZoneId.of("Europe/Vienna");

    private static final Path FOLDER = Path.of("src/test/resources/sillbook/exchange/logger");
    private static final String EXPECTED = ".expected";

    static List<Fixture> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> !file.toString().endsWith(EXPECTED))
                    .sorted()
                    .map(Fixture::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Fixture read(Path file) {
        String whole = file.getFileName().toString();
        String name = whole.substring(0, whole.indexOf('.'));
        Map<String, String> expected = new LinkedHashMap<>();
        List<Taken> readings = new ArrayList<>();
        try {
            for (String line : Files.readAllLines(file.resolveSibling(name + EXPECTED), UTF_8)) {
                int colon = line.indexOf(": ");
                if (colon > 0) {
                    expected.put(line.substring(0, colon), line.substring(colon + 2));
                } else if (!line.isEmpty()) {
                    readings.add(reading(line.split(" ", -1)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Fixture(name, file, expected, readings);
    }

    private static Taken reading(String[] words) {
        int milli = (int) Math.round(Double.parseDouble(words[1]) * 1000);
        return new Taken(Instant.parse(words[0]), milli, words.length > 2);
    }

    Source source() {
        return Source.of(file);
    }

    /** What is to be told before it can be read. */
    LoggerFormat told() {
        String[] words = expected.getOrDefault("told", " ").split(" ", 2);
        return switch (words[0]) {
            case "dates" -> LoggerFormat.OPEN.withDates(order(words[1]));
            case "column" -> LoggerFormat.OPEN.withColumn(Integer.parseInt(words[1]));
            case "device" -> LoggerFormat.OPEN.withDevice(words[1]);
            case "suspicious" ->
                LoggerFormat.OPEN.withSuspicious(Set.of((int) Math.round(Double.parseDouble(words[1]) * 1000)));
            default -> LoggerFormat.OPEN;
        };
    }

    private static DateOrder order(String word) {
        return switch (word) {
            case "dmy" -> DateOrder.DAY_MONTH_YEAR;
            case "mdy" -> DateOrder.MONTH_DAY_YEAR;
            default -> DateOrder.YEAR_MONTH_DAY;
        };
    }

    boolean isRefused() {
        return expected.containsKey("refused");
    }

    @Override
    public String toString() {
        return name;
    }
}
