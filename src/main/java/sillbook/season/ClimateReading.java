// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.model.Temperature;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.PlaceClimate.Drift;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.SoFar;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.WhyTrial.Tried;

/** Works out how warm a place has been. */
final class ClimateReading {
    static final int WEEK = 7;

    /** A line is laid through no fewer days, and a place that changes less is steady; in degrees C a day (judgement). */
    private static final int FEWEST_FOR_DRIFT = 4;

    private static final double LEAST_DRIFT = 0.1;

    private final Journal journal;
    private final Place place;
    private final LocalDate today;
    private final ReadDays days;
    private final Optional<Band> band;

    ClimateReading(Journal journal, Place place, LocalDate today) {
        this.journal = journal;
        this.place = place;
        this.today = today;
        this.days = ReadDays.of(journal, place.id(), today);
        this.band = band(place);
    }

    /** What the grower said is usual; else, in the cold, what counts whole. */
    static Optional<Band> band(Place place) {
        return place.usual()
                .or(() -> Optional.of(Band.ofCelsius(ColdWeight.USUAL.full(), ColdWeight.USUAL.fading()))
                        .filter(cold -> place.serves() == Stage.COLD));
    }

    PlaceClimate read() {
        Optional<Strayed> strayed = days.last().flatMap(this::strayed);
        return new PlaceClimate(
                band,
                now(),
                days.last(),
                week(),
                strayed,
                strayed.isPresent() ? Optional.empty() : days.last().flatMap(this::drift),
                days.firstFrom(seasonStart()).map(this::soFar),
                days.last()
                        .filter(last -> !last.isBefore(today.minusDays(1)))
                        .map(last -> trial(last).read()));
    }

    private LocalDate seasonStart() {
        return journal.seasonOf(today).firstDay(journal.settings().seasonStart());
    }

    private Optional<LastRead> now() {
        return journal.daysRead()
                .lastAt(place.id())
                .filter(last -> !last.at()
                        .atZone(journal.settings().zone())
                        .toLocalDate()
                        .isAfter(today));
    }

    private Optional<Band> week() {
        DaySpan week = DaySpan.ofInclusive(today.minusDays(WEEK - 1L), today);
        List<Band> extremes = Stream.concat(
                        days.sums(week).values().stream().map(DayRead::between),
                        days.spansReadIn(week).map(ReadDays.Spanned::between))
                .toList();
        return extremes.isEmpty() ? Optional.empty() : Optional.of(around(extremes));
    }

    private static Band around(Collection<Band> each) {
        int low = each.stream().mapToInt(band -> band.low().milli()).min().orElseThrow();
        int high = each.stream().mapToInt(band -> band.high().milli()).max().orElseThrow();
        return new Band(new Temperature(low, ""), new Temperature(high, ""));
    }

    /** On which side of the band a day lay: by its mean, else by the whole of its span. Empty inside, and where nothing is known. */
    private Optional<Side> side(LocalDate day) {
        return days.sum(day)
                .map(ClimateReading::judged)
                .or(() -> days.span(day).map(ReadDays.Spanned::between))
                .flatMap(all -> side(all.low().milli(), all.high().milli()));
    }

    /** Of a day that is known for the most part its mean; a night alone says nothing of the day. */
    private static Band judged(DayRead day) {
        Temperature mean = new Temperature(day.mean(), "");
        return PlaceClimate.isMostlyKnown(day) ? new Band(mean, mean) : day.between();
    }

    /** All of it lies outside. */
    private Optional<Side> side(int lowest, int highest) {
        if (band.filter(all -> lowest > all.high().milli()).isPresent()) {
            return Optional.of(Side.OVER);
        }
        return band.filter(all -> highest < all.low().milli()).map(all -> Side.UNDER);
    }

    private Optional<Strayed> strayed(LocalDate last) {
        return side(last).map(side -> {
            LocalDate since = last;
            while (side(since.minusDays(1)).filter(side::equals).isPresent()) {
                since = since.minusDays(1);
            }
            DaySpan all = DaySpan.ofInclusive(since, last);
            return new Strayed(side, since, hours(all), mean(all));
        });
    }

    private double hours(DaySpan all) {
        return all.start()
                .datesUntil(all.endExclusive())
                .mapToDouble(days::known)
                .sum();
    }

    private Optional<Temperature> mean(DaySpan all) {
        Collection<DayRead> sums = days.sums(all).values();
        double hours = sums.stream().mapToDouble(DayRead::known).sum();
        double degrees =
                sums.stream().mapToDouble(day -> day.known() * day.mean()).sum();
        return sums.size() < all.days()
                ? Optional.empty()
                : Optional.of(new Temperature((int) Math.round(degrees / hours), ""));
    }

    /** Of the last week known those days that are known for the most part. */
    List<DayRead> lately() {
        return days.last()
                .map(last -> days.sums(DaySpan.ofInclusive(last.minusDays(WEEK - 1L), last)).values().stream())
                .orElseGet(Stream::empty)
                .filter(PlaceClimate::isMostlyKnown)
                .toList();
    }

    /** By the straight line that lies nearest to the means of the last week known. */
    private Optional<Drift> drift(LocalDate last) {
        List<DayRead> week = lately();
        if (week.size() < FEWEST_FOR_DRIFT || band.isEmpty()) {
            return Optional.empty();
        }
        double day = week.stream().mapToDouble(each -> on(each, last)).average().orElseThrow();
        double mean = week.stream().mapToDouble(DayRead::mean).average().orElseThrow();
        double across = week.stream()
                .mapToDouble(each -> (on(each, last) - day) * (each.mean() - mean))
                .sum();
        double along = week.stream()
                .mapToDouble(each -> Math.pow(on(each, last) - day, 2))
                .sum();
        double slope = across / along;
        return drift(last, mean - slope * day, slope);
    }

    /** Days from the last one: 0 and below. */
    private static long on(DayRead day, LocalDate last) {
        return ChronoUnit.DAYS.between(last, day.day());
    }

    /** @param level of the last day, in thousandths of a degree, as the slope is a day */
    private Optional<Drift> drift(LocalDate last, double level, double slope) {
        if (Math.abs(slope) < LEAST_DRIFT * 1000) {
            return Optional.empty();
        }
        return IntStream.rangeClosed(1, WEEK)
                .boxed()
                .flatMap(
                        ahead -> outside(level + slope * ahead)
                                .map(side -> new Drift(side, slope / 1000, last.plusDays(ahead)))
                                .stream())
                .findFirst();
    }

    private Optional<Side> outside(double milli) {
        int rounded = (int) Math.round(milli);
        return side(rounded, rounded);
    }

    private TrialReading trial(LocalDate last) {
        return new TrialReading(days, last, this::isInBand);
    }

    /** The days the trial of the place rests on; the first first. */
    List<Tried> tried() {
        return days.last().map(last -> trial(last).tried()).orElseGet(List::of);
    }

    /** By the mean of a day, or the whole of a span; and without frost. */
    private boolean isInBand(LocalDate day) {
        return days.between(day)
                .filter(all -> side(day).isEmpty() && all.low().milli() >= 0)
                .filter(all -> days.sum(day).isPresent() || isInside(all))
                .isPresent();
    }

    private boolean isInside(Band span) {
        return band.filter(all -> span.low().milli() >= all.low().milli()
                        && span.high().milli() <= all.high().milli())
                .isPresent();
    }

    private SoFar soFar(LocalDate since) {
        LocalDate last = days.last().orElseThrow();
        DaySpan all = DaySpan.ofInclusive(since, last);
        List<LocalDate> each = all.start().datesUntil(all.endExclusive()).toList();
        return new SoFar(since, count(each, Side.OVER), count(each, Side.UNDER), frosts(all), gaps(each), share(since));
    }

    private int count(List<LocalDate> each, Side side) {
        return (int) each.stream()
                .filter(day -> side(day).filter(side::equals).isPresent())
                .count();
    }

    /** Of the first day only the hours known count; of today, which is not over, none, unless it is the first. */
    private double share(LocalDate since) {
        DaySpan after = DaySpan.of(since.isBefore(today) ? since.plusDays(1) : today, today);
        double all = after.start()
                .datesUntil(after.endExclusive())
                .mapToDouble(days::hours)
                .sum();
        return (days.known(since) + hours(after)) / (days.known(since) + all);
    }

    /** Days that went below 0 C; of a span that did at least one did, and no more is known. */
    private int frosts(DaySpan all) {
        return (int) Stream.concat(
                        days.sums(all).values().stream().map(DayRead::between),
                        days.spansIn(all).map(ReadDays.Spanned::between))
                .filter(between -> between.low().milli() < 0)
                .count();
    }

    private List<DaySpan> gaps(List<LocalDate> each) {
        List<DaySpan> unknown = new ArrayList<>();
        each.stream().filter(day -> !days.isKnown(day)).forEach(day -> unknown.add(DaySpan.ofInclusive(day, day)));
        return DaySpan.joined(unknown);
    }
}
