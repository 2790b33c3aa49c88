// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import sillbook.model.Day;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;
import sillbook.model.Thermometer.IceTest;

/** Invented thermometers at places of an invented winter: their days' sums, as the store would give them. */
public final class ReadWinter {
    private final Journal journal;
    private final List<DayRead> days = new ArrayList<>();
    private final List<LastRead> last = new ArrayList<>();

    private final List<Edit> thermometers = new ArrayList<>();

    private ReadWinter(Journal journal) {
        this.journal = journal;
    }

    public static ReadWinter at(Journal journal) {
        return new ReadWinter(journal);
    }

    /** The winter of {@link GrowersWinter}, every place of it with a thermometer; one was not read for a while, one has a gap. */
    public static Journal told() {
        return at(GrowersWinter.told().journal())
                .warmth("garage fridge", 0.9, Map.of("2026-09-20", 4.4, "2026-12-01", 3.6, "2027-01-12", 3.9))
                .last("garage fridge", "2027-01-12T09:40:00Z", 3.8)
                .warmth(
                        "cellar",
                        0.4,
                        Map.of(
                                "2026-08-31", 14.0,
                                "2026-09-28", 11.6,
                                "2026-10-20", 9.0,
                                "2026-11-20", 7.6,
                                "2026-11-29", 7.2))
                .warmth(
                        "cellar",
                        0.4,
                        Map.of(
                                "2026-12-07", 7.0,
                                "2026-12-26", 6.6,
                                "2027-01-05", 8.0,
                                "2027-01-09", 8.9,
                                "2027-01-12", 9.5))
                .last("cellar", "2027-01-12T10:30:00Z", 9.6)
                .warmth(
                        "trench",
                        0.7,
                        Map.of(
                                "2026-10-08", 9.8,
                                "2026-11-10", 6.1,
                                "2026-12-18", 2.4,
                                "2026-12-24", -0.4,
                                "2026-12-28", 1.2,
                                "2027-01-03", 1.6))
                .last("trench", "2027-01-03T08:00:00Z", 1.5)
                .warmth(
                        "porch",
                        3.2,
                        Map.of("2026-10-01", 13.0, "2026-11-15", 8.5, "2026-12-24", 5.8, "2027-01-12", 7.9))
                .last("porch", "2027-01-12T09:15:00Z", 8.1)
                .warmth("stair window", 1.4, Map.of("2026-11-20", 12.9, "2027-01-12", 12.3))
                .last("stair window", "2027-01-12T08:30:00Z", 12.4)
                .warmth("kitchen sill", 1.7, Map.of("2026-11-01", 18.4, "2027-01-12", 17.8))
                .last("kitchen sill", "2027-01-12T11:05:00Z", 18.2)
                .journal();
    }

    /** Every day between the given ones, its mean on the line through them and a little beside it, as far up as down. */
    public ReadWinter warmth(String place, double swing, Map<String, Double> means) {
        NavigableMap<LocalDate, Double> knots = new TreeMap<>();
        means.forEach((day, mean) -> knots.put(LocalDate.parse(day), mean));
        knots.firstKey()
                .datesUntil(knots.lastKey().plusDays(1))
                .forEach(day -> day(place, day, mean(knots, day), swing));
        return this;
    }

    /** One day that is known whole. */
    public ReadWinter day(String place, LocalDate day, double mean, double swing) {
        int milli = (int) Math.round(mean * 1000);
        int half = (int) Math.round(swing * 1000);
        double freezing = milli - half < 0 ? 6 : 0;
        days.add(new DayRead(
                id(place),
                day,
                24,
                24,
                24,
                24,
                freezing,
                milli + half > 13_000 ? 6 : 0,
                milli,
                milli - half,
                milli + half));
        return this;
    }

    private static double mean(NavigableMap<LocalDate, Double> knots, LocalDate day) {
        Map.Entry<LocalDate, Double> before = knots.floorEntry(day);
        Map.Entry<LocalDate, Double> after = knots.ceilingEntry(day);
        double length = ChronoUnit.DAYS.between(before.getKey(), after.getKey());
        double share = length == 0 ? 0 : ChronoUnit.DAYS.between(before.getKey(), day) / length;
        double weather = 0.25 * Math.sin(day.toEpochDay() * 1.3) + 0.15 * Math.sin(day.toEpochDay() * 0.37);
        return before.getValue() + share * (after.getValue() - before.getValue()) + weather;
    }

    /** The newest reading. */
    public ReadWinter last(String place, String at, double celsius) {
        last.add(new LastRead(id(place), Instant.parse(at), Temperature.ofCelsius(celsius)));
        return this;
    }

    /** A thermometer, and what it read in ice water on 3 October. */
    public ReadWinter thermometer(String place, String lies, double ice) {
        IceTest test = new IceTest(Temperature.ofCelsius(ice), Day.on(LocalDate.of(2026, 10, 3)));
        thermometers.add(
                new Edit.Put(new Thermometer(new Id<>(98, thermometers.size()), id(place), lies, Optional.of(test))));
        return this;
    }

    private Id<Place> id(String name) {
        return journal.places().all().stream()
                .filter(place -> place.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    public Journal journal() {
        return journal.with(thermometers).with(DaysRead.of(days, last));
    }

    /** Noon of the day the pictures are drawn on. */
    public static Instant noon() {
        return Desk.TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC);
    }
}
