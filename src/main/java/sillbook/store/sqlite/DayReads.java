// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Id;
import sillbook.model.LastRead;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;
import sillbook.store.DaySums;
import sillbook.store.DaySums.Basis;

/** The sums of days: kept beside the readings, and worked out anew where these, or what the sums rest on, changed. */
final class DayReads {
    private static final String COLUMNS =
            "SELECT place, day, readings, known, effective, published, freezing, warm, mean, lowest, highest FROM day_read";
    private static final String SINCE = " WHERE place IN (SELECT place FROM day_basis) AND day >= ?1";
    private static final String BEFORE = " WHERE place IN (SELECT air FROM trench) AND day < ?1";
    private static final String PUT = Sql.file("queries/put-day.sql");
    private static final String FORGET = "DELETE FROM day_read WHERE place = ? AND day BETWEEN ? AND ?";
    private static final String FORGET_ALL = "DELETE FROM day_read WHERE place = ?";
    private static final String LAST = Sql.file("queries/last-read.sql");
    private static final String BASIS = "SELECT zone, bridges, correction FROM day_basis WHERE place = ?";
    private static final String PUT_BASIS =
            "INSERT OR REPLACE INTO day_basis (place, zone, bridges, correction) VALUES (?, ?, ?, ?)";
    private static final String READ_PLACES =
            "SELECT place FROM reading_place WHERE place IN (SELECT id FROM place) UNION SELECT place FROM spot_reading";
    private static final long EVER = 1L << 40;

    private final Database database;
    private final Content content;
    private final Readings readings;
    private final DaySums sums;

    DayReads(Database database, Content content, Readings readings, DaySums sums) {
        this.database = database;
        this.content = content;
        this.readings = readings;
        this.sums = sums;
    }

    DaysRead all() {
        return daysRead(database.list(COLUMNS, DayReads::read));
    }

    /** Those from a day on; and all of the air over a trench, whose course is told by years. */
    DaysRead since(LocalDate first) {
        return daysRead(
                database.list(COLUMNS + SINCE + " UNION ALL " + COLUMNS + BEFORE, DayReads::read, first.toString()));
    }

    private DaysRead daysRead(List<DayRead> days) {
        List<LastRead> last = new ArrayList<>();
        for (Id<Place> place : readPlaces()) {
            last(place).ifPresent(last::add);
        }
        return DaysRead.of(days, last);
    }

    /** The places of which anything was ever read. */
    List<Id<Place>> readPlaces() {
        return database.list(READ_PLACES, Row::<Place>id);
    }

    private Optional<LastRead> last(Id<Place> place) {
        return database.first(
                LAST,
                row -> new LastRead(place, row.instant(), new Temperature(row.number(), "")),
                readings.number(place),
                place.toString());
    }

    private static DayRead read(Row row) throws SQLException {
        return new DayRead(
                row.id(),
                row.date(),
                row.number(),
                row.real(),
                row.real(),
                row.real(),
                row.real(),
                row.real(),
                row.number(),
                row.number(),
                row.number());
    }

    /** The days of a stretch, both in it. */
    List<DayRead> between(Id<Place> place, LocalDate first, LocalDate last) {
        return database.list(
                COLUMNS + " WHERE place = ? AND day BETWEEN ? AND ?",
                DayReads::read,
                place.toString(),
                first.toString(),
                last.toString());
    }

    /** What the sums of a place rest on by now. */
    Basis basis(Id<Place> place) {
        ZoneId zone = content.read(new SettingsRows(), "").get(0).zone();
        Duration bridges = content.read(new PlaceRows(), " WHERE id = ?", place.toString()).stream()
                .findFirst()
                .map(Place::bridges)
                .orElse(Duration.ZERO);
        int correction = content.read(new ThermometerRows(), " WHERE place = ? ORDER BY id", place.toString()).stream()
                .findFirst()
                .map(Thermometer::correctionMilli)
                .orElse(0);
        return new Basis(zone, bridges, correction);
    }

    /** Whether anything was to be worked out anew. */
    boolean follow(WrongSums wrong) {
        if (wrong.isNothing()) {
            return false;
        }
        boolean any = !wrong.stretches().isEmpty();
        if (wrong.bases()) {
            for (Id<Place> place : readPlaces()) {
                any |= followBasis(place);
            }
        }
        wrong.stretches().forEach(this::refresh);
        wrong.clear();
        return any;
    }

    private boolean followBasis(Id<Place> place) {
        Basis now = basis(place);
        Optional<Basis> before = database.first(
                BASIS, row -> new Basis(ZoneId.of(row.text()), row.duration(), row.number()), place.toString());
        boolean changed = before.filter(known -> !known.equals(now)).isPresent();
        if (changed) {
            rebuild(place);
        }
        return changed;
    }

    /** Works out all days of a place. */
    void rebuild(Id<Place> place) {
        database.update(FORGET_ALL, place.toString());
        Basis basis = keepBasis(place);
        readings.tally(place, -EVER, EVER, sums.days(place, basis, this::put));
    }

    private Basis keepBasis(Id<Place> place) {
        Basis basis = basis(place);
        database.update(
                PUT_BASIS,
                place.toString(),
                basis.zone().getId(),
                basis.bridges().toSeconds(),
                basis.correction());
        return basis;
    }

    /** Works out the days that a stretch of readings touches: as far as the readings next to it, unless there is a gap. */
    void refresh(WrongSums.Stretch stretch) {
        Id<Place> place = stretch.place();
        Basis basis = keepBasis(place);
        long bridges = basis.bridges().toSeconds();
        long from = readings.before(place, stretch.from()).orElse(stretch.from() - bridges - 1);
        long to = readings.after(place, stretch.to()).orElse(stretch.to() + bridges + 1);
        LocalDate first = day(stretch.from() - from > bridges ? stretch.from() : from, basis.zone());
        LocalDate last = day(to - stretch.to() > bridges ? stretch.to() : to, basis.zone());
        database.update(FORGET, place.toString(), first.toString(), last.toString());
        readings.tally(
                place,
                first.atStartOfDay(basis.zone()).toEpochSecond(),
                last.plusDays(1).atStartOfDay(basis.zone()).toEpochSecond(),
                sums.days(place, basis, day -> {
                    if (!day.day().isBefore(first) && !day.day().isAfter(last)) {
                        put(day);
                    }
                }));
    }

    /** Sums of days of a place, as it is by now. */
    DaySums.Tally tally(Id<Place> place, Consumer<DayRead> taking) {
        return sums.days(place, keepBasis(place), taking);
    }

    static LocalDate day(long at, ZoneId zone) {
        return LocalDate.ofInstant(Instant.ofEpochSecond(at), zone);
    }

    void put(DayRead day) {
        database.update(
                PUT,
                day.place().toString(),
                day.day().toString(),
                day.readings(),
                day.known(),
                day.effective(),
                day.published(),
                day.freezing(),
                day.warm(),
                day.mean(),
                day.lowest(),
                day.highest());
    }

    /** Places whose sums are other than worked out anew, as sentences. */
    List<String> findings() {
        List<String> findings = new ArrayList<>();
        for (Id<Place> place : readPlaces()) {
            List<DayRead> anew = new ArrayList<>();
            readings.tally(place, -EVER, EVER, sums.days(place, basis(place), anew::add));
            List<DayRead> kept = database.list(COLUMNS + " WHERE place = ?", DayReads::read, place.toString());
            if (!Objects.equals(anew, kept)) {
                findings.add("The days of place " + place + " are not what its readings come to.");
            }
        }
        return findings;
    }
}
