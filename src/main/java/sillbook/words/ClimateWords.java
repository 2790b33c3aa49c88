// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.handbook.Origin;
import sillbook.model.Band;
import sillbook.model.LastRead;
import sillbook.model.Settings;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceClimate.Drift;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.SoFar;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.text.Initial;

/**
 * How warm a place has been, in words.
 *
 * @param now the moment since which it is said how long ago something was read
 */
public record ClimateWords(Settings settings, Instant now) {
    private static final double HOURS = 24;
    private static final double HOURS_ARE_SAID_UP_TO = 96;
    private static final int HOURS_AGO = 48;
    private static final String UNREAD = "unread";
    private static final Temperature FREEZING = Temperature.ofCelsius(0);

    private TemperatureUnit unit() {
        return settings.temperatures();
    }

    /** All there is to say, a fact each; {@code unread} of a place that never was. */
    public List<String> all(PlaceClimate climate) {
        if (!climate.isRead()) {
            return List.of(UNREAD);
        }
        List<String> facts = new ArrayList<>(recent(climate));
        climate.season().ifPresent(season -> facts.addAll(season(climate, season)));
        return facts;
    }

    /** {@code 9.6 C 1 h ago}; {@code 7.9 to 9.7 C this week}; {@code over its band since Sun 10 Jan, 56 h known}. */
    public List<String> recent(PlaceClimate climate) {
        Stream<String> latest =
                climate.now().stream().map(last -> Temperatures.say(last.temperature(), unit()) + " " + ago(last));
        Stream<String> week = climate.week().stream().map(this::week);
        Stream<String> out = climate.strayed().stream().map(this::strayed);
        Stream<String> drift = climate.drift().stream().map(this::drift);
        return Stream.of(latest, week, out, drift).flatMap(facts -> facts).toList();
    }

    /** {@code 2 h ago}, {@code 9 d ago}, {@code unread}. */
    public String ago(PlaceClimate climate) {
        return climate.now()
                .filter(last -> climate.lastDay().filter(dayOf(last)::isBefore).isEmpty())
                .map(this::ago)
                .or(() -> climate.lastDay().map(day -> Ago.say(day, today())))
                .orElse(UNREAD);
    }

    /** Days are counted as those of a place that is unread: from midnight to midnight. */
    private String ago(LastRead last) {
        return Duration.between(last.at(), now).toHours() < HOURS_AGO
                ? Ago.say(last.at(), now)
                : Ago.say(dayOf(last), today());
    }

    private LocalDate today() {
        return LocalDate.ofInstant(now, settings.zone());
    }

    private LocalDate dayOf(LastRead last) {
        return LocalDate.ofInstant(last.at(), settings.zone());
    }

    private String week(Band week) {
        return Temperatures.fromTo(week, unit()) + " this week";
    }

    private String strayed(Strayed strayed) {
        String mean = strayed.mean()
                .map(degrees -> ", " + Temperatures.say(degrees, unit()) + " on the average")
                .orElse("");
        return side(strayed.side()) + " its band since " + Days.day(strayed.since()) + mean;
    }

    /**
     * {@code Over its band since Sun 10 Jan, 56 h so far. At 9.6 C a day gives 20 of its 24 hours (?).}
     *
     * @param forCold whether pots stand there for the cold, so that its hours count
     */
    public String atLength(Strayed strayed, boolean forCold) {
        String side = Initial.large(side(strayed.side()));
        String since =
                side + " its band since " + Days.day(strayed.since()) + ", " + soFar(strayed.hours()) + " so far.";
        return since + strayed.mean().filter(mean -> forCold).map(this::worth).orElse("");
    }

    private static String soFar(double hours) {
        return hours <= HOURS_ARE_SAID_UP_TO ? Math.round(hours) + " h" : Counts.of(Math.round(hours / HOURS), "day");
    }

    private String worth(Temperature mean) {
        long hours = Math.round(HOURS * ColdWeight.USUAL.at(mean.celsius()));
        return " At " + Temperatures.say(mean, unit()) + " a day gives " + hours + " of its 24 hours ("
                + OriginMarks.mark(Origin.ASSUMED) + ").";
    }

    private String drift(Drift drift) {
        int milli = (int) Math.round(Math.abs(drift.perDay()) * 1000);
        String change = Temperatures.difference(milli, unit()).substring(1);
        String way = drift.side() == Side.OVER ? " warmer" : " colder";
        return change + way + " a day, " + side(drift.side()) + " its band by " + Days.day(drift.on())
                + " at that pace";
    }

    private static String side(Side side) {
        return side == Side.OVER ? "over" : "under";
    }

    /** {@code since 31 Aug 55 days over 9 C, 2 days with frost, under 0 C}; {@code 95 % read}; {@code not read 30 Nov-6 Dec}. */
    public List<String> season(PlaceClimate climate, SoFar season) {
        List<String> facts = new ArrayList<>();
        facts.add("since " + Days.date(season.since()) + " " + out(climate, season));
        facts.add(Counts.percent(season.share()) + " read");
        gaps(season.gaps()).ifPresent(facts::add);
        return facts;
    }

    private String out(PlaceClimate climate, SoFar season) {
        List<String> out = new ArrayList<>();
        climate.band().ifPresent(band -> {
            days(season.daysOver(), "over", band.high()).ifPresent(out::add);
            days(season.daysUnder(), "under", band.low()).ifPresent(out::add);
        });
        days(season.daysUnderZero(), "with frost, under", FREEZING).ifPresent(out::add);
        String none = climate.band().isPresent() ? "no day out of its band" : "no day with frost";
        return out.isEmpty() ? none : String.join(", ", out);
    }

    private Optional<String> days(int days, String side, Temperature edge) {
        return days == 0
                ? Optional.empty()
                : Optional.of(Counts.of(days, "day") + " " + side + " " + Temperatures.say(edge, unit()));
    }

    /** The first ones by their days; how many more there are. */
    private static Optional<String> gaps(List<DaySpan> gaps) {
        int named = 3;
        String said = gaps.stream().limit(named).map(Days::span).collect(Collectors.joining(", "));
        String more = gaps.size() > named ? " and " + (gaps.size() - named) + " more times" : "";
        return gaps.isEmpty() ? Optional.empty() : Optional.of("not read " + said + more);
    }
}
