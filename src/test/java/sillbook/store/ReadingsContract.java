// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Step;
import sillbook.model.ChartColumn;
import sillbook.model.DateOrder;
import sillbook.model.Day;
import sillbook.model.DayRead;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Length;
import sillbook.model.Logged;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerProfile;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.model.Settings;
import sillbook.model.SpotReading;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;
import sillbook.model.Trench;
import sillbook.reckon.Weather;
import sillbook.reckon.cold.ColdHad;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.cold.Reading;
import sillbook.reckon.cold.Trace;

/** What every storage must do with readings. */
public abstract class ReadingsContract {
    private static final Instant NOW = Instant.parse("2027-01-12T08:41:00Z");
    private static final Instant START = Instant.parse("2026-11-02T00:00:00Z");
    private static final Place CELLAR = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);
    private static final Place PORCH = Place.of(new Id<>(2, 2), "porch", Place.Sort.PORCH);

    @TempDir
    protected Path folder;

    private Store store;

    protected abstract Storage storage();

    @BeforeEach
    void begin() {
        store = storage().begin(folder.resolve("journal.sillbook"), journal("UTC"));
    }

    @AfterEach
    void close() {
        assertThat(store.verify()).isEmpty();
        store.close();
    }

    private static Journal journal(String zone) {
        return Journal.of(List.of(Settings.initial(ZoneId.of(zone)), CELLAR, PORCH));
    }

    private static Logged at(Instant from, double hours, double celsius) {
        return new Logged(from.plusSeconds(Math.round(hours * 3600)), (int) Math.round(celsius * 1000), false);
    }

    private static Logged doubtful(double hours, double celsius) {
        Logged reading = at(START, hours, celsius);
        return new Logged(reading.at(), reading.milli(), true);
    }

    /** A reading every hour, at one temperature. */
    private static List<Logged> hourly(int fromHour, int toHourExclusive, double celsius) {
        List<Logged> readings = new ArrayList<>();
        for (int hour = fromHour; hour < toHourExclusive; hour++) {
            readings.add(at(START, hour, celsius));
        }
        return readings;
    }

    private Written.Kept take(Place place, String name, List<Logged> readings) {
        return kept(
                store.takeIn(store.revision(), ListFeed.delivery(place.id(), name, readings), Progress.UNWATCHED, NOW));
    }

    private Written.Kept put(Entity<?> entity) {
        return kept(store.commit(store.revision(), new Step("put", List.of(new Edit.Put(entity))), List.of(), NOW));
    }

    private static Written.Kept kept(Written written) {
        assertThat(written).isInstanceOf(Written.Kept.class);
        return (Written.Kept) written;
    }

    private Collection<DayRead> days(Place place) {
        return store.read().journal().daysRead().at(place.id()).values();
    }

    private List<Logged> raw(Place place) {
        return store.readings(place.id(), Instant.EPOCH, NOW.plus(9999, ChronoUnit.DAYS)).stream()
                .map(reading -> new Logged(reading.at(), reading.milli(), reading.isSuspicious()))
                .toList();
    }

    @Test
    void takesReadingsIn() {
        List<Logged> readings = hourly(0, 49, 5);

        Written.Kept kept = take(CELLAR, "cellar.csv", readings);

        assertThat(kept.step().name()).isEqualTo("49 readings of cellar taken in from cellar.csv");
        assertThat(raw(CELLAR)).isEqualTo(readings);
        assertThat(store.readings(CELLAR.id(), START.plusSeconds(3600), START.plusSeconds(7201)))
                .containsExactly(
                        new Logged(START.plusSeconds(3600), 5000, false, "cellar.csv", 2),
                        new Logged(START.plusSeconds(7200), 5000, false, "cellar.csv", 3));
        assertThat(days(CELLAR))
                .containsExactly(
                        new DayRead(CELLAR.id(), LocalDate.of(2026, 11, 2), 24, 24, 24, 24, 0, 0, 5000, 5000, 5000),
                        new DayRead(CELLAR.id(), LocalDate.of(2026, 11, 3), 24, 24, 24, 24, 0, 0, 5000, 5000, 5000));
        assertThat(store.read().journal().daysRead().lastAt(CELLAR.id()))
                .contains(new LastRead(CELLAR.id(), START.plusSeconds(48 * 3600), new Temperature(5000, "")));
        assertThat(kept.days()).contains(store.read().journal().daysRead());
        assertThat(store.read().journal().readingSources().all())
                .extracting(ReadingSource::name, ReadingSource::readings, ReadingSource::first)
                .containsExactly(tuple("cellar.csv", 49, START));
        assertThat(days(PORCH)).isEmpty();
    }

    @Test
    void theFirstScreenHasTheDaysToo() {
        take(CELLAR, "cellar.csv", hourly(0, 49, 5));

        assertThat(store.readCurrent(NOW).journal().daysRead())
                .isEqualTo(store.read().journal().daysRead());
        assertThat(store.readCurrent(NOW.plus(Duration.ofDays(900)))
                        .journal()
                        .daysRead()
                        .at(CELLAR.id()))
                .as("no pot needs them any more")
                .isEmpty();
        assertThat(store.readCurrent(NOW.plus(Duration.ofDays(900)))
                        .journal()
                        .daysRead()
                        .lastAt(CELLAR.id()))
                .isPresent();
    }

    @Test
    void theFirstScreenHasAllDaysOfTheAirOverATrench() {
        take(PORCH, "porch.csv", hourly(0, 49, 5));
        put(new Trench(
                new Id<>(7, 7),
                CELLAR.id(),
                Length.ofCentimetres(20),
                Trench.Soil.GARDEN_SOIL,
                Optional.empty(),
                new Trench.Read(PORCH.id()),
                Optional.empty()));

        assertThat(store.readCurrent(NOW.plus(Duration.ofDays(900)))
                        .journal()
                        .daysRead()
                        .at(PORCH.id()))
                .isNotEmpty();
    }

    @Test
    void aFileWithReadingsBeforeAndAfterWhatIsThereLeavesTheDaysBetween() {
        take(CELLAR, "middle.csv", hourly(72, 120, 12));
        List<Logged> around = new ArrayList<>(hourly(0, 48, 5));
        around.addAll(hourly(144, 192, 5));
        take(CELLAR, "around.csv", around);

        assertThat(store.verify()).isEmpty();
        assertThat(days(CELLAR))
                .filteredOn(day -> day.highest() == 12_000 && day.lowest() == 12_000)
                .hasSize(1);
    }

    @Test
    void theSameFileIsTakenInOnce() {
        take(CELLAR, "cellar.csv", hourly(0, 49, 5));
        String before = store.dump();
        Delivery again = ListFeed.delivery(CELLAR.id(), "copy of cellar.csv", hourly(0, 49, 5));

        assertThat(store.compare(again, Progress.UNWATCHED).isTakenIn()).isTrue();
        assertThat(store.takeIn(
                        store.revision(),
                        ListFeed.delivery(CELLAR.id(), "copy of cellar.csv", hourly(0, 49, 5)),
                        Progress.UNWATCHED,
                        NOW))
                .isEqualTo(new Written.Nothing());
        assertThat(store.dump()).isEqualTo(before);
        assertThat(take(PORCH, "cellar.csv", hourly(0, 49, 5)).step().name())
                .as("of another place it is another source")
                .isEqualTo("49 readings of porch taken in from cellar.csv");
    }

    @Test
    void whatIsWrittenDownBesideGoesWithTheReadings() {
        LoggerProfile profile = new LoggerProfile(
                new Id<>(7, 1),
                CELLAR.id(),
                new LoggerProfile.Mark("Date;Temp", LoggerFormat.Separator.SEMICOLON, 2),
                LoggerFormat.OPEN.withDates(DateOrder.DAY_MONTH_YEAR).withSuspicious(Set.of(0, 25_500)));
        Delivery readings = ListFeed.delivery(CELLAR.id(), "cellar.csv", hourly(0, 49, 5));
        String before = store.dump();

        Written.Kept kept = kept(store.takeIn(
                store.revision(),
                new Delivery(
                        readings.place(),
                        readings.name(),
                        readings.original(),
                        readings.feed(),
                        List.of(new Edit.Put(profile))),
                Progress.UNWATCHED,
                NOW));

        assertThat(kept.step().edits()).contains(new Edit.Put(profile));
        assertThat(store.read().journal().loggerProfilesAt(CELLAR.id())).containsExactly(profile);
        assertThat(store.readCurrent(NOW).journal().loggerProfilesAt(CELLAR.id()))
                .containsExactly(profile);
        String after = store.dump();
        kept(store.takeBack(store.revision(), NOW));
        assertThat(store.dump()).as("one step takes both back").isEqualTo(before);
        kept(store.putBack(store.revision(), NOW));
        assertThat(store.dump()).isEqualTo(after);
    }

    @Test
    void nothingIsTakenInFromNothing() {
        assertThat(store.takeIn(
                        store.revision(),
                        ListFeed.delivery(CELLAR.id(), "empty.csv", List.of()),
                        Progress.UNWATCHED,
                        NOW))
                .isEqualTo(new Written.Nothing());
        assertThat(store.steps(0, 1).all()).isZero();
    }

    @Test
    void whatIsStoppedOrStaleLeavesNothing() {
        String before = store.dump();
        long revision = store.revision();
        Delivery stopped = ListFeed.delivery(CELLAR.id(), "cellar.csv", hourly(0, 12_000, 5));

        assertThat(store.takeIn(revision, stopped, soFar -> false, NOW)).isEqualTo(new Written.Nothing());
        assertThat(store.takeIn(
                        revision + 1,
                        ListFeed.delivery(CELLAR.id(), "cellar.csv", hourly(0, 9, 5)),
                        Progress.UNWATCHED,
                        NOW))
                .isEqualTo(new Written.Stale());

        assertThat(store.dump()).isEqualTo(before);
        assertThat(store.revision()).isEqualTo(revision);
        assertThat(take(CELLAR, "cellar.csv", hourly(0, 9, 5)).step().name()).startsWith("9 readings");
    }

    @Test
    void comparesWithoutWriting() {
        take(CELLAR, "one.csv", hourly(0, 10, 5));
        String before = store.dump();
        List<Logged> other = new ArrayList<>(hourly(8, 12, 5));
        other.set(1, at(START, 9, 7));
        other.add(doubtful(12, 85));
        other.add(at(START, 3, 4));
        other.add(doubtful(12, 85));
        other.add(at(START, 2, 5));
        AtomicReference<Comparison> last = new AtomicReference<>();

        Comparison comparison = store.compare(ListFeed.delivery(CELLAR.id(), "two.csv", other), soFar -> {
            last.set(soFar);
            return true;
        });

        assertThat(comparison)
                .isEqualTo(new Comparison(
                        8,
                        3,
                        2,
                        1,
                        2,
                        1,
                        2,
                        false,
                        List.of(
                                new Comparison.Difference(START.plusSeconds(9 * 3600), 5000, 7000, 2, true),
                                new Comparison.Difference(START.plusSeconds(3 * 3600), 5000, 4000, 6, false))));
        assertThat(last.get()).isEqualTo(comparison);
        assertThat(store.dump()).isEqualTo(before);
        assertThat(store.steps(0, 9).all()).isEqualTo(1);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void overlappingSourcesComeToTheSameInAnyOrder(long seed) {
        Random random = new Random(seed);
        List<List<Logged>> sources = List.of(random(random, 40), random(random, 40), random(random, 40));
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2));
        List<String> dumps = new ArrayList<>();
        for (int round = 0; round < 3; round++) {
            Collections.shuffle(order, random);
            for (int source : order) {
                take(CELLAR, "source " + source, sources.get(source));
            }
            dumps.add(store.dump() + days(CELLAR));
            takeAllBack();
        }
        assertThat(dumps).containsOnly(dumps.get(0));
    }

    /** Of few moments and temperatures, so that many meet; some twice, some suspicious, in no order. */
    private static List<Logged> random(Random random, int howMany) {
        List<Logged> readings = new ArrayList<>();
        for (int index = 0; index < howMany; index++) {
            Logged plain = at(START, random.nextInt(90), random.nextInt(3));
            readings.add(new Logged(plain.at(), plain.milli(), random.nextInt(5) == 0));
        }
        return readings;
    }

    private void takeAllBack() {
        while (store.takeBack(store.revision(), NOW) instanceof Written.Kept) {}
    }

    /** Whatever is done, the days are what they are worked out to in the end, and every step leads back and forth. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void everyStepLeadsBackAndForth(long seed) {
        Random random = new Random(seed);
        List<String> dumps = new ArrayList<>(List.of(state()));
        for (int act = 0; act < 14; act++) {
            act(random, act);
            dumps.add(state());
            assertThat(store.verify()).isEmpty();
        }
        for (int back = dumps.size() - 2; back >= 0; back--) {
            Written.Kept kept = kept(store.takeBack(store.revision(), NOW));
            kept.days()
                    .ifPresent(days ->
                            assertThat(days).isEqualTo(store.read().journal().daysRead()));
            assertThat(state()).isEqualTo(dumps.get(back));
        }
        for (int forth = 1; forth < dumps.size(); forth++) {
            kept(store.putBack(store.revision(), NOW));
            assertThat(state()).isEqualTo(dumps.get(forth));
        }
    }

    private String state() {
        return store.dump() + store.read().journal().daysRead();
    }

    private void act(Random random, int act) {
        switch (random.nextInt(7)) {
            case 0 ->
                put(new SpotReading(
                        new Id<>(5, random.nextInt(4)),
                        CELLAR.id(),
                        START.plusSeconds(random.nextInt(400_000)).plusMillis(random.nextInt(1000)),
                        new Temperature(random.nextInt(9_000), "")));
            case 1 ->
                put(new Thermometer(
                        new Id<>(6, 1),
                        CELLAR.id(),
                        "",
                        Optional.of(new Thermometer.IceTest(
                                new Temperature(random.nextInt(900), ""), Day.on(LocalDate.of(2026, 11, 1))))));
            case 2 -> put(bridging(Duration.ofHours(1 + random.nextInt(40))));
            case 3 -> put(Settings.initial(ZoneId.of(random.nextBoolean() ? "Pacific/Chatham" : "UTC")));
            case 4 ->
                store.commit(
                        store.revision(),
                        new Step(
                                "gone",
                                store.read().journal().spotReadings().all().stream()
                                        .limit(1)
                                        .<Edit>map(Edit.Remove::new)
                                        .toList()),
                        List.of(),
                        NOW);
            default -> take(CELLAR, "source " + act, random(random, 5 + random.nextInt(40)));
        }
    }

    private static Place bridging(Duration bridges) {
        return new Place(
                CELLAR.id(),
                CELLAR.name(),
                CELLAR.sort(),
                CELLAR.serves(),
                CELLAR.usual(),
                CELLAR.coldDays(),
                "",
                CELLAR.room(),
                CELLAR.checkEveryDays(),
                bridges,
                CELLAR.hazards(),
                "");
    }

    @Test
    void suspiciousReadingsAreKeptAndLeftOut() {
        List<Logged> readings = new ArrayList<>(hourly(0, 25, 5));
        readings.set(12, doubtful(12, 85));
        readings.set(24, doubtful(24, -999));

        take(CELLAR, "cellar.csv", readings);

        assertThat(raw(CELLAR)).isEqualTo(readings);
        assertThat(days(CELLAR))
                .containsExactly(
                        new DayRead(CELLAR.id(), LocalDate.of(2026, 11, 2), 23, 23, 23, 23, 0, 0, 5000, 5000, 5000));
        assertThat(store.read().journal().daysRead().lastAt(CELLAR.id()))
                .map(LastRead::at)
                .contains(START.plusSeconds(23 * 3600));
    }

    @Test
    void ofNothingButSuspiciousReadingsNothingIsKnown() {
        take(CELLAR, "broken.csv", List.of(doubtful(0, 85), doubtful(1, 85), doubtful(30, 85)));

        assertThat(raw(CELLAR)).hasSize(3);
        assertThat(days(CELLAR)).isEmpty();
        assertThat(store.read().journal().daysRead().lastAt(CELLAR.id())).isEmpty();
        assertThat(store.chart(CELLAR.id(), START, START.plusSeconds(7200), 4)).isEmpty();
    }

    @Test
    void theCorrectionIsNotWrittenIntoTheReadings() {
        take(CELLAR, "cellar.csv", hourly(0, 25, 5));
        Temperature read = new Temperature(600, "0.6");
        put(new Thermometer(
                new Id<>(6, 1),
                CELLAR.id(),
                "on the middle shelf",
                Optional.of(new Thermometer.IceTest(read, Day.on(LocalDate.of(2026, 11, 1))))));

        assertThat(raw(CELLAR)).isEqualTo(hourly(0, 25, 5));
        assertThat(days(CELLAR)).extracting(DayRead::mean).containsExactly(4400);
        assertThat(store.read().journal().daysRead().lastAt(CELLAR.id()))
                .map(LastRead::temperature)
                .contains(new Temperature(4400, ""));
        assertThat(store.chart(CELLAR.id(), START, START.plusSeconds(7200), 1))
                .containsExactly(new ChartColumn(0, 4400, 4400, 4400));
    }

    @Test
    void typedAndLoggedReadingsCountTogether() {
        put(new SpotReading(new Id<>(5, 1), CELLAR.id(), START, new Temperature(4_000, "4")));
        take(CELLAR, "cellar.csv", List.of(at(START, 12, 8)));

        assertThat(raw(CELLAR)).containsExactly(at(START, 0, 4), at(START, 12, 8));
        assertThat(days(CELLAR))
                .containsExactly(
                        new DayRead(CELLAR.id(), LocalDate.of(2026, 11, 2), 2, 12, 12, 12, 0, 0, 6000, 4000, 8000));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-10-25, Europe/London, 25",
        "2027-03-28, Europe/London, 23",
        "2026-09-27, Pacific/Chatham, 23",
        "2026-11-02, UTC, 24"
    })
    void aDayIsAsLongAsItsClockMakesIt(LocalDate day, String zone, int hours) {
        put(Settings.initial(ZoneId.of(zone)));
        Instant noonBefore =
                day.minusDays(1).atTime(12, 0).atZone(ZoneId.of(zone)).toInstant();

        take(CELLAR, "cellar.csv", List.of(at(noonBefore, 0, 5), at(noonBefore, 50, 5)));

        assertThat(days(CELLAR))
                .filteredOn(read -> read.day().equals(day))
                .extracting(DayRead::known, DayRead::readings)
                .containsExactly(tuple((double) hours, 0));
    }

    /**
     * Against {@link Trace}, which integrates each stretch by itself: in zones and seasons where the clocks change, with gaps over midnights, the readings taken
     * in by halves, the second half first.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31, 32, 33, 34, 35, 36})
    void daysAreWhatTheWholeComesTo(long seed) {
        Random random = new Random(seed);
        ZoneId zone = ZoneId.of(
                List.of("Europe/London", "America/New_York", "Pacific/Chatham").get(random.nextInt(3)));
        put(new Settings(
                zone,
                MonthDay.of(7, 1),
                Settings.TemperatureUnit.CELSIUS,
                Settings.LengthUnit.CENTIMETRES,
                Settings.Colours.ASK,
                true));
        List<Logged> series =
                series(random, Instant.parse(random.nextBoolean() ? "2026-10-20T00:00:00Z" : "2027-03-08T00:00:00Z"));
        int half = series.size() / 2;
        take(PORCH, "later.csv", series.subList(half, series.size()));
        take(PORCH, "earlier.csv", series.subList(0, half));

        Trace trace = trace(series);
        ColdHad whole = trace.cold(ColdWeight.USUAL);
        Collection<DayRead> days = days(PORCH);
        assertThat(days.stream().mapToDouble(DayRead::effective).sum()).isCloseTo(whole.effective(), within(1e-6));
        assertThat(days.stream().mapToDouble(DayRead::freezing).sum()).isCloseTo(whole.freezing(), within(1e-6));
        assertThat(days.stream().mapToDouble(DayRead::known).sum())
                .isCloseTo(whole.hours() - whole.unaccounted(), within(1e-6));
        assertThat(whole.unaccounted()).as("there are gaps").isPositive();
        days.forEach(day -> requireDay(day, trace, zone));
    }

    /** Every so many minutes, with gaps of up to two days, from -6 to 18 C. */
    private static List<Logged> series(Random random, Instant from) {
        List<Logged> series = new ArrayList<>();
        double hours = 0;
        double celsius = 6;
        for (int index = 0; index < 300; index++) {
            series.add(at(from, hours, celsius));
            hours += random.nextInt(25) == 0 ? 48 * random.nextDouble() : 0.1 + 2 * random.nextDouble();
            celsius = Math.max(-6, Math.min(18, celsius + 6 * random.nextDouble() - 3));
        }
        return series;
    }

    private static Trace trace(List<Logged> series) {
        return Trace.of(
                series.stream()
                        .map(reading -> new Reading(reading.at(), reading.milli() / 1000.0))
                        .toList(),
                PORCH.bridges());
    }

    private static void requireDay(DayRead day, Trace whole, ZoneId zone) {
        Instant from = day.day().atStartOfDay(zone).toInstant();
        Instant to = day.day().plusDays(1).atStartOfDay(zone).toInstant();
        double effective = 0;
        double hours = 0;
        for (int index = 1; index < whole.readings().size(); index++) {
            List<Reading> pair = whole.readings().subList(index - 1, index + 1);
            Duration apart = Duration.between(pair.get(0).at(), pair.get(1).at());
            if (apart.compareTo(whole.longestBridged()) <= 0) {
                ColdHad had = new Trace(pair, whole.longestBridged())
                        .between(from, to)
                        .cold(ColdWeight.USUAL);
                effective += had.effective();
                hours += had.hours();
            }
        }
        assertThat(day.effective()).as("%s", day).isCloseTo(effective, within(1e-6));
        assertThat(day.known()).as("%s", day).isCloseTo(hours, within(1e-6));
    }

    /** The check sums of the open hours, worked out in numpy and in R, by way of the store. */
    @ParameterizedTest
    @CsvSource({
        "2010-10-01T00:00:00, 2010-12-31T23:00:00, 1809.597314",
        "2010-01-01T01:00:00, 2010-03-31T23:00:00, 2084.721787",
        "2010-01-01T01:00:00, 2010-12-31T23:00:00, 4675.083678"
    })
    void theOpenWeatherComesToItsCheckSums(String from, String to, double effective) {
        List<Logged> hours = Weather.hours(from, to).stream()
                .map(reading -> new Logged(reading.at(), (int) Math.round(reading.celsius() * 1000), false))
                .toList();

        take(PORCH, "seattle-weather-hourly-normals.csv", hours);

        assertThat(days(PORCH).stream().mapToDouble(DayRead::effective).sum()).isCloseTo(effective, within(1e-6));
    }

    @Test
    void aGapInTheOpenWeatherIsNotAccountedFor() {
        List<Reading> autumn = Weather.hours("2010-10-01T00:00:00", "2010-12-31T23:00:00");
        List<Logged> gapped = IntStream.range(0, autumn.size())
                .filter(hour -> hour < 1001 || hour > 1029)
                .mapToObj(autumn::get)
                .map(reading -> new Logged(reading.at(), (int) Math.round(reading.celsius() * 1000), false))
                .toList();

        take(PORCH, "gapped.csv", gapped);

        assertThat(days(PORCH).stream().mapToDouble(DayRead::effective).sum()).isCloseTo(1780.738162, within(1e-6));
        assertThat(days(PORCH).stream().mapToDouble(DayRead::known).sum()).isCloseTo(2207 - 30, within(1e-9));
    }

    @Test
    void aChartIsDrawnOfReadingsOrOfDays() {
        List<Logged> readings = new ArrayList<>();
        for (int hour = 0; hour <= 240; hour++) {
            readings.add(at(START, hour, hour % 24 < 12 ? 2 : 6));
        }
        take(CELLAR, "cellar.csv", readings);

        List<ChartColumn> near = store.chart(CELLAR.id(), START.plusSeconds(3 * 3600), START.plusSeconds(7 * 3600), 8);
        List<ChartColumn> far = store.chart(CELLAR.id(), START, START.plus(Duration.ofDays(20)), 10);

        assertThat(near)
                .hasSize(8)
                .allSatisfy(column -> assertThat(column.mean()).isEqualTo(2000));
        assertThat(far)
                .hasSize(5)
                .allSatisfy(column -> {
                    assertThat(column.lowest()).isEqualTo(2000);
                    assertThat(column.highest()).isEqualTo(6000);
                    assertThat(column.mean()).isBetween(3900, 4100);
                })
                .extracting(ChartColumn::column)
                .containsExactly(0, 1, 2, 3, 4);
    }

    @Test
    void aBackupHoldsThem() {
        take(CELLAR, "cellar.csv", hourly(0, 49, 5));
        Path copy = folder.resolve("copy.sillbook");

        store.backUp(copy);

        try (Store backup = storage().open(copy)) {
            assertThat(backup.read().journal()).isEqualTo(store.read().journal());
            assertThat(backup.dump()).isEqualTo(store.dump());
            assertThat(backup.verify()).isEmpty();
        }
    }

    private ReadingSource source(String name) {
        return store.read().journal().readingSources().all().stream()
                .filter(source -> source.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Written.Kept remove(String... names) {
        List<Edit> edits = new ArrayList<>();
        for (String name : names) {
            edits.add(new Edit.Remove(source(name)));
        }
        return kept(store.commit(store.revision(), new Step("removed", edits), List.of(), NOW));
    }

    @Test
    void aSourceThatIsRemovedTakesItsReadingsAndBringsThemBack() {
        take(CELLAR, "first.csv", hourly(0, 48, 5));
        String before = store.dump();
        take(CELLAR, "second.csv", hourly(48, 96, 8));
        String both = store.dump();
        Collection<DayRead> days = days(CELLAR);
        remove("second.csv");

        assertThat(store.dump()).isEqualTo(before);
        assertThat(days(CELLAR)).allMatch(day -> day.highest() == 5000);
        kept(store.takeBack(store.revision(), NOW));
        assertThat(store.dump()).isEqualTo(both);
        assertThat(days(CELLAR)).containsExactlyElementsOf(days);
        kept(store.putBack(store.revision(), NOW));
        assertThat(store.dump()).isEqualTo(before);
        kept(store.takeBack(store.revision(), NOW));
        kept(store.takeBack(store.revision(), NOW));
        assertThat(store.dump()).isEqualTo(before);
    }

    @Test
    void severalSourcesGoAsOneStepAndMayComeAgain() {
        take(CELLAR, "first.csv", hourly(0, 48, 5));
        take(CELLAR, "second.csv", hourly(48, 96, 8));
        String both = store.dump();
        remove("first.csv", "second.csv");
        assertThat(days(CELLAR)).isEmpty();

        take(CELLAR, "first.csv", hourly(0, 48, 5));
        assertThat(days(CELLAR)).hasSize(2);
        remove("first.csv");
        assertThat(days(CELLAR)).isEmpty();
        kept(store.takeBack(store.revision(), NOW));
        assertThat(days(CELLAR)).hasSize(2);
        kept(store.takeBack(store.revision(), NOW));
        kept(store.takeBack(store.revision(), NOW));
        assertThat(store.dump()).isEqualTo(both);
    }
}
