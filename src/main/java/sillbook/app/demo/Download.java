// SPDX-License-Identifier: Apache-2.0
package sillbook.app.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import sillbook.exchange.logger.LoggerFeed;
import sillbook.exchange.logger.LoggerFile;
import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.store.Delivery;

/** What the thermometer of a place had kept when its file was taken in. */
record Download(Id<Place> place, String file) {

    /** To be taken in; each is gone through once. */
    Delivery delivery() {
        return new Delivery(place, file, this::open, feed());
    }

    private InputStream open() {
        return Demo.open(file);
    }

    private LoggerFeed feed() {
        return LoggerFile.look(this::open, LoggerFormat.OPEN, List.of(), Demo.ZONE)
                .fold(LoggerFile::feed, why -> {
                    throw new IllegalStateException(file + ": " + why.sentence());
                });
    }

    /** Thousandths of a degree by the second; those that are suspicious left out. */
    NavigableMap<Long, Integer> readings() {
        NavigableMap<Long, Integer> readings = new TreeMap<>();
        try (LoggerFeed feed = feed()) {
            while (feed.advance()) {
                if (!feed.isSuspicious()) {
                    readings.put(feed.at(), feed.milli());
                }
            }
        }
        return readings;
    }

    /**
     * What the journal says of it once it is taken in.
     *
     * @param readings of it, none suspicious
     */
    ReadingSource source(NavigableMap<Long, Integer> readings) {
        String hash = hash();
        return new ReadingSource(
                ReadingSource.idOf(place, hash),
                place,
                file,
                hash,
                readings.size(),
                0,
                Instant.ofEpochSecond(readings.firstKey()),
                Instant.ofEpochSecond(readings.lastKey()));
    }

    private String hash() {
        try (InputStream in = open()) {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(in.readAllBytes()));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
