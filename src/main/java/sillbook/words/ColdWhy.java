// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.stream.Stream;
import sillbook.handbook.Origin;
import sillbook.model.Band;
import sillbook.model.Journal;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;
import sillbook.reckon.cold.ColdWeight;
import sillbook.season.ColdAhead;
import sillbook.season.ColdCount;
import sillbook.season.ColdPart;
import sillbook.season.ColdStretch;
import sillbook.season.DryCold;
import sillbook.season.Prospect;
import sillbook.words.Explanation.Line;

/** The sum behind the cold of a pot, line by line. What an hour at a temperature is worth is a judgement of ours, and marked. */
record ColdWhy(Journal journal) {
    private static final String OURS = OriginMarks.mark(Origin.ASSUMED);
    private static final int PERCENT = 100;

    private static final String BY_CALENDAR =
            "A day counts when the pot was potted and watered and stood in the cold, at a place that is cold on that day. Seven days "
                    + "make a week.";

    static final String AHEAD =
            "The days to come count as those of the last two weeks read at its place did: their mean for the likely day; for the "
                    + "earliest and the latest the spread of single days, and the most and the least that may have counted so far ("
                    + OURS + ").";

    String rule(ColdCount cold) {
        return cold.isRead() ? byThermometer(journal.settings().temperatures()) : BY_CALENDAR;
    }

    private static String byThermometer(TemperatureUnit unit) {
        return "A day counts by what thermometers saw of it: whole from "
                + Temperatures.fromTo(Band.ofCelsius(ColdWeight.USUAL.full(), ColdWeight.USUAL.fading()), unit)
                + ", in part up to " + Temperatures.say(Temperature.ofCelsius(ColdWeight.USUAL.gone()), unit)
                + ", where it works more slowly, and from "
                + Temperatures.fromTo(Band.ofCelsius(0, ColdWeight.USUAL.full()), unit)
                + " in part until it is rooted, then whole (" + OURS
                + "). Of a lowest and a highest the middle between them "
                + "speaks. Warm spells are never taken off. A day that was not read counts when its place is cold on it.";
    }

    /** What one sort of bulb needs, and had dry. */
    static Stream<Line> share(Prospect.Share share) {
        String need = share.need().cold().map(WhyWords::range).orElse("none");
        DryCold dry = share.dry();
        Line before = new Line(
                "needs " + need, "cooled dry before", days(dry.beforeTheyCame().orElse(0)));
        Line stood = new Line("? assumed", "stood dry where it is cold since they came", days(dry.atTheirPlace()));
        return dry.atTheirPlace() == 0 ? Stream.of(before) : Stream.of(before, stood);
    }

    static String total(ColdCount cold) {
        boolean isBounded = !inDays(cold.least()).equals(inDays(cold.most()));
        String bounds = cold.isRead() && isBounded ? ", " + inDays(cold.least()) + " to " + inDays(cold.most()) : "";
        double whole = cold.isRead() ? cold.likely() : cold.daysColdEnough();
        return (cold.isRead() ? OURS + inDays(whole) + " days" : days(cold.daysColdEnough())) + bounds + " by 7 is "
                + Decimal.sayFixed(Weeks.ofDays(whole), 1) + " wk";
    }

    /** By the calendar one line; else one for each way in which its days are known. */
    Stream<Line> stretch(ColdStretch stretch) {
        return stretch.isRead()
                ? stretch.parts().stream().map(part -> line(stretch, part))
                : Stream.of(new Line(
                        span(stretch),
                        place(stretch) + cold(stretch) + counted(stretch),
                        days(stretch.daysColdEnough())));
    }

    private static String span(ColdStretch stretch) {
        return Days.span(stretch.days());
    }

    private String place(ColdStretch stretch) {
        return stretch.place().map(id -> journal.places().get(id).name()).orElse("a place nobody wrote");
    }

    private static String cold(ColdStretch stretch) {
        return ", cold " + ColdDayWords.say(stretch.coldDays()) + ": ";
    }

    private static String counted(ColdStretch stretch) {
        return stretch.daysIn() == stretch.daysColdEnough() ? "all of it" : "of " + days(stretch.daysIn());
    }

    private Line line(ColdStretch stretch, ColdPart part) {
        return new Line(span(stretch), place(stretch) + ": " + known(stretch, part), value(part));
    }

    private static String known(ColdStretch stretch, ColdPart part) {
        String of = inDays(part.days()) + (inDays(part.days()).equals("1") ? " day " : " days ");
        return of
                + switch (part.basis()) {
                    case READ -> "read";
                    case BETWEEN -> "known by lowest and highest";
                    case ASSUMED -> "not read, cold " + ColdDayWords.say(stretch.coldDays()) + " (assumed)";
                    case UNACCOUNTED -> "not accounted for, between readings (assumed)";
                };
    }

    private static String value(ColdPart part) {
        String likely = inDays(part.likely());
        boolean isBounded = !inDays(part.least()).equals(inDays(part.most()));
        return OURS + likely + (isBounded ? " (" + inDays(part.least()) + "-" + inDays(part.most()) + ")" : "");
    }

    /** How many more days a pot waits for so many days of cold. */
    List<Line> ahead(ColdAhead cold, String how, int days) {
        Line need = new Line(how, "of cold in the pot", days(days));
        if (!cold.isRead()) {
            return List.of(new Line("cold since", "as if without a break", Days.day(cold.reaches(0))), need);
        }
        Line had = new Line(
                "had",
                "up to " + Days.day(cold.countedTo()),
                OURS + inDays(cold.had().likely()) + " days");
        String lately = cold.pace().isRead() ? "as lately read there" : "by the calendar";
        Line worth = new Line(
                "a day", "there counts, " + lately, OURS + percent(cold.pace().likely()));
        return List.of(had, worth, need);
    }

    private static String percent(double share) {
        return Long.toString(Math.round(share * PERCENT));
    }

    private static String inDays(double days) {
        return Decimal.say(days, 1);
    }

    private static String days(long days) {
        return Counts.of(days, "day");
    }
}
