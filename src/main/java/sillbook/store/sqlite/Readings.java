// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.time.Instant;
import java.util.OptionalLong;
import java.util.function.Consumer;
import sillbook.model.Id;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.store.DaySums;

/** The readings of places, those of loggers and the typed ones. */
final class Readings {
    private static final int SUSPICIOUS = 1;
    private static final String NUMBER = "SELECT number FROM reading_place WHERE place = ?";
    private static final String NEW_NUMBER = "INSERT INTO reading_place (place) VALUES (?)";
    private static final String RAW = Sql.file("queries/readings.sql");
    private static final String LOGGED = Sql.file("queries/logged-in-order.sql");
    private static final String ALL = Sql.file("queries/all-in-order.sql");
    private static final String BEFORE = Sql.file("queries/reading-before.sql");
    private static final String AFTER = Sql.file("queries/reading-after.sql");
    private static final String TYPED = "SELECT count(*) FROM spot_reading WHERE place = ? AND at BETWEEN ? AND ?";
    private static final int MILLIS = 1000;

    private final Database database;

    Readings(Database database) {
        this.database = database;
    }

    /** The short number of a place; 0 while no logger's reading of it was ever taken in. */
    long number(Id<Place> place) {
        return database.first(NUMBER, Row::large, place.toString()).orElse(0L);
    }

    long numberOrNew(Id<Place> place) {
        if (number(place) == 0) {
            database.update(NEW_NUMBER, place.toString());
        }
        return number(place);
    }

    void each(Id<Place> place, Instant from, Instant toExclusive, Consumer<Logged> taking) {
        database.each(
                RAW,
                result -> {
                    Row row = new Row(result);
                    Instant at = Instant.ofEpochMilli(row.large());
                    taking.accept(
                            new Logged(at, row.number(), (row.number() & SUSPICIOUS) != 0, row.text(), row.number()));
                },
                number(place),
                place.toString(),
                from.toEpochMilli(),
                toExclusive.toEpochMilli());
    }

    /** Those that are not suspicious, from the last before a second to the first after another; of one second the mean. */
    void tally(Id<Place> place, long from, long to, DaySums.Tally tally) {
        long number = number(place);
        long first = before(place, from).orElse(from);
        long last = after(place, to).orElse(to);
        boolean typed = isTyped(place, first, last);
        Database.Taking reading = result -> tally.read(result.getLong(1), result.getInt(2));
        if (typed) {
            database.each(ALL, reading, number, place.toString(), first, last);
        } else {
            database.each(LOGGED, reading, number, first, last);
        }
        tally.end();
    }

    /** Whether a reading was typed between two seconds, both in it. */
    boolean isTyped(Id<Place> place, long from, long to) {
        return database.number(TYPED, place.toString(), from * MILLIS, to * MILLIS + MILLIS - 1) > 0;
    }

    /** The second of the last reading before another that is not suspicious. */
    OptionalLong before(Id<Place> place, long at) {
        return found(BEFORE, place, at);
    }

    OptionalLong after(Id<Place> place, long at) {
        return found(AFTER, place, at);
    }

    private OptionalLong found(String query, Id<Place> place, long at) {
        return database.first(query, Row::optionalLarge, number(place), place.toString(), at)
                .flatMap(found -> found)
                .map(OptionalLong::of)
                .orElseGet(OptionalLong::empty);
    }
}
