// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Temperature;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceClimate.Drift;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.PlaceClimate.Trial;
import sillbook.season.WhyClimate;
import sillbook.season.WhyDrift;
import sillbook.season.WhyFrost;
import sillbook.season.WhyStrayed;
import sillbook.season.WhyTrial;
import sillbook.season.WhyUnread;
import sillbook.words.Explanation.Line;

/** Why something is said of how warm a place is, as it is read; what would change it is not said yet. */
record ClimateWhy(Settings settings) implements WhyClimate.ClimateCases<Explanation> {
    /** Earlier ones stand together. */
    private static final int DAYS_NAMED = 7;

    /** In thousandths of a degree a day. */
    private static final int LEAST_DRIFT = 100;

    @Override
    public Explanation frost(WhyFrost why) {
        return new FrostWhy(settings.temperatures()).explain(why);
    }

    /** {@code over its band since Sat 9 Jan}. */
    @Override
    public Explanation strayed(WhyStrayed why) {
        Strayed strayed = why.result();
        String mean = strayed.mean().map(Temperature::milli).map(this::degrees).orElse("");
        return new Explanation(
                side(strayed.side()) + " its band since " + Days.day(strayed.since()),
                "A day is out of the band by the mean of what was read on it. Back from the last day known, all in a row"
                        + " count together.",
                List.of(whoseBand(why)),
                daysStrayed(why.days()),
                Math.round(strayed.hours()) + " h, " + mean + " on the average",
                List.of());
    }

    /** {@code over its band by Sat 16 Jan at this pace}. */
    @Override
    public Explanation drift(WhyDrift why) {
        Drift drift = why.result();
        String change = Temperatures.difference((int) Math.round(drift.perDay() * 1000), settings.temperatures());
        return new Explanation(
                side(drift.side()) + " its band by " + Days.day(drift.on()) + " at this pace",
                "Of the last week known each day counts of which " + PlaceClimate.MOST_OF_A_DAY
                        + " hours or more are. The straight line that lies nearest to"
                        + " their means is drawn on for a week. Fewer than 4 days, or less than "
                        + Temperatures.difference(LEAST_DRIFT, settings.temperatures())
                                .substring(1)
                        + " a day, tell nothing"
                        + " (our judgement).",
                List.of(whoseBand(why)),
                why.days().stream().map(this::line).toList(),
                change + " a day",
                List.of());
    }

    /** {@code unread 12 days}. */
    @Override
    public Explanation unread(WhyUnread why) {
        return new Explanation(
                "unread " + Counts.of(why.result(), "day"),
                "Where pots have their cold nothing is counted that lies further from a reading than is bridged at the place;"
                        + " so a reading is asked for once that, or a day, has passed.",
                List.of(new ReadingWords(settings).bridged(why.place())),
                List.of(
                        new Line("last day known", "", Days.day(why.last())),
                        new Line("today", "", Days.day(why.today()))),
                Counts.of(why.result(), "day"),
                List.of());
    }

    /** {@code on trial: 5 of 7 days}. */
    @Override
    public Explanation trial(WhyTrial why) {
        Trial trial = why.result();
        LocalDate first = why.days().get(0).day();
        String title = trial.isOver()
                ? (trial.isPassed() ? "passed" : "failed") + " its trial of " + Trial.DAYS + " days"
                : "on trial: " + trial.days() + " of " + Trial.DAYS + " days";
        Stream<Line> earlier = trial.since().isBefore(first)
                ? Stream.of(new Line(Days.span(trial.since(), first.minusDays(1)), "read, and before the seven", ""))
                : Stream.empty();
        return new Explanation(
                title,
                "A place for the cold where no pot stands is tried by the last " + Trial.DAYS
                        + " days on end that were read:"
                        + " each in the band by its mean, or by all of its lowest and highest, and without frost."
                        + " A day of which fewer than " + PlaceClimate.MOST_OF_A_DAY
                        + " hours are known counts only against it, by its frost (our judgement).",
                List.of(whoseBand(why)),
                Stream.concat(earlier, why.days().stream().map(this::tried)).toList(),
                trial.inBand() + " of " + Math.min(trial.days(), Trial.DAYS) + " in the band",
                List.of());
    }

    private Line tried(WhyTrial.Tried day) {
        if (!day.counts()) {
            return new Line(Days.day(day.day()), band(day.between()) + ", " + hours(day.known()), "does not count");
        }
        return new Line(Days.day(day.day()), band(day.between()), day.isInBand() ? "in" : "out");
    }

    private static String side(Side side) {
        return side == Side.OVER ? "over" : "under";
    }

    /** The band, and whose it is. */
    private String whoseBand(WhyClimate<?> why) {
        Place place = why.place();
        PlaceClimate climate = PlaceClimate.of(why.journal(), place.id(), why.today());
        String band = climate.band().map(this::band).orElse("");
        return place.usual().isPresent()
                ? "▪ what is usual there, as written: " + band
                : "? of a place for the cold: " + band + ", between which an hour counts whole";
    }

    private String band(Band band) {
        return Temperatures.fromTo(band, settings.temperatures());
    }

    /** A line for each of the last days. */
    private List<Line> daysStrayed(List<DayRead> days) {
        int before = Math.max(0, days.size() - DAYS_NAMED);
        List<Line> lines = new ArrayList<>();
        if (before > 0) {
            String earlier = Days.span(days.get(0).day(), days.get(before - 1).day());
            lines.add(new Line(earlier, Counts.of(before, "day"), ""));
        }
        days.subList(before, days.size()).forEach(day -> lines.add(line(day)));
        return lines;
    }

    private Line line(DayRead day) {
        return new Line(
                Days.day(day.day()), band(day.between()) + ", " + hours(day.known()), "mean " + degrees(day.mean()));
    }

    private static String hours(double known) {
        return Math.round(known) + " h known";
    }

    private String degrees(int milli) {
        return Temperatures.say(new Temperature(milli, ""), settings.temperatures());
    }
}
