// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import sillbook.reckon.cold.Reading;
import sillbook.reckon.heat.SineDay;

/** The open weather files; their source, licence and sums stand beside them in {@code sources.md}. */
public final class Weather {
    private Weather() {}

    /** Each hour as printed, its stamp taken for UTC. */
    public static List<Reading> hours() {
        return rows("seattle-weather-hourly-normals.csv").stream()
                .map(row ->
                        new Reading(LocalDateTime.parse(row[0]).toInstant(ZoneOffset.UTC), Double.parseDouble(row[2])))
                .toList();
    }

    /** The hours from one stamp to another, both in it. */
    public static List<Reading> hours(String from, String to) {
        Instant first = LocalDateTime.parse(from).toInstant(ZoneOffset.UTC);
        Instant last = LocalDateTime.parse(to).toInstant(ZoneOffset.UTC);
        return hours().stream()
                .filter(reading ->
                        !reading.at().isBefore(first) && !reading.at().isAfter(last))
                .toList();
    }

    /** Each day with its lowest and highest. */
    public static NavigableMap<LocalDate, SineDay> days() {
        NavigableMap<LocalDate, SineDay> days = new TreeMap<>();
        rows("seattle-weather.csv")
                .forEach(row -> days.put(
                        LocalDate.parse(row[0]), new SineDay(Double.parseDouble(row[3]), Double.parseDouble(row[2]))));
        return days;
    }

    private static List<String[]> rows(String file) {
        return new String(bytes(file), StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .map(line -> line.split(",", -1))
                .toList();
    }

    /** The sum of a file, in hexadecimal. */
    static String sha256(String file) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes(file)));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }

    static byte[] bytes(String file) {
        try (InputStream in = Weather.class.getResourceAsStream("weather/" + file)) {
            return in.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
