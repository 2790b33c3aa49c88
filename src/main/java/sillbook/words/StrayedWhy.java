// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Temperature;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.WhyStrayed;
import sillbook.words.Explanation.Line;

/** Since when a place is out of its band, explained. */
record StrayedWhy(Settings settings) {
    static final String RULE =
            "A day is out of the band by the mean of what was read on it. Back from the last day known, all in a row"
                    + " count together.";

    /** Earlier ones stand together. */
    private static final int DAYS_NAMED = 7;

    /** {@code over its band since Sat 9 Jan}. */
    static String title(Strayed strayed) {
        return (strayed.side() == Side.OVER ? "over" : "under") + " its band since " + Days.day(strayed.since());
    }

    /** The band, and whose it is. */
    String from(WhyStrayed why) {
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
    List<Line> sum(WhyStrayed why) {
        List<DayRead> days = why.days();
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
        Band between = new Band(new Temperature(day.lowest(), ""), new Temperature(day.highest(), ""));
        String hours = Math.round(day.known()) + " h known";
        return new Line(Days.day(day.day()), band(between) + ", " + hours, "mean " + degrees(day.mean()));
    }

    private String degrees(int milli) {
        return Temperatures.say(new Temperature(milli, ""), settings.temperatures());
    }

    /** {@code 96 h, 9.2 C on the average}. */
    String total(Strayed strayed) {
        String mean = strayed.mean().map(Temperature::milli).map(this::degrees).orElse("");
        return Math.round(strayed.hours()) + " h, " + mean + " on the average";
    }
}
