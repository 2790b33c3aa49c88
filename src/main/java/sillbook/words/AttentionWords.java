// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.handbook.Origin;
import sillbook.model.Band;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.Trial;
import sillbook.season.Today.Attention;
import sillbook.season.WaitingBulbs;

/** What a day says of a place that wants attention. */
public record AttentionWords(Journal journal) implements Attention.Cases<String> {
    private static final double HOURS = 24;

    /** From here on days are said. */
    private static final double HOURS_TOLD_AS_DAYS = 36;

    public String say(Attention attention) {
        return attention.fold(this);
    }

    /** {@code cellar: 22 pots, room for 20}. */
    @Override
    public String overRoom(Attention.OverRoom attention) {
        return name(attention.place()) + ": " + Counts.of(attention.pots(), "pot") + ", room for " + attention.room();
    }

    /** {@code garage fridge: 6 pots beside fruit}. */
    @Override
    public String hazard(Attention.BesideHazard attention) {
        List<String> beside = new ArrayList<>();
        if (attention.pots() > 0) {
            beside.add(Counts.of(attention.pots(), "pot"));
        }
        if (attention.bulbs() > 0) {
            beside.add(Counts.of(attention.bulbs(), "dry bulb"));
        }
        return name(attention.place()) + ": " + String.join(" and ", beside) + " beside "
                + PlaceTerms.HAZARDS.say(attention.hazard());
    }

    /** {@code trench: no round since 2 Jan}. */
    @Override
    public String unchecked(Attention.Unchecked attention) {
        return name(attention.place()) + ": no round since " + Days.date(attention.last());
    }

    /** {@code porch: not cold now, 3 pots}. */
    @Override
    public String notCold(Attention.NotCold attention) {
        return name(attention.place()) + ": not cold now, " + Counts.of(attention.pots(), "pot");
    }

    /** {@code garage fridge: 'Marrow Lane' 9 weeks dry, pot by 5 Dec}. */
    @Override
    public String dryLong(Attention.DryLong attention) {
        WaitingBulbs bulbs = attention.bulbs();
        String variety = new PotNames(journal).variety(bulbs.purchase().variety());
        return name(attention.place()) + ": " + variety + " "
                + Weeks.sayDays(bulbs.dry().days()) + " dry, pot by " + Days.date(attention.potBy());
    }

    /** {@code cellar 9.6 C, over its 2-9 C for 2 days}. */
    @Override
    public String outOfBand(Attention.OutOfBand attention) {
        String last = attention.last().map(now -> " " + said(now)).orElse("");
        return name(attention.place()) + last + ", " + side(attention.strayed().side()) + " its "
                + band(attention.band()) + " for " + lasting(attention.strayed().hours());
    }

    private static String lasting(double hours) {
        return hours < HOURS_TOLD_AS_DAYS
                ? Counts.of(Math.round(hours), "hour")
                : Counts.of(Math.round(hours / HOURS), "day");
    }

    /** {@code cellar warms, over its 2-9 C about Sat 16 Jan}. */
    @Override
    public String leavingBand(Attention.LeavingBand attention) {
        boolean warms = attention.drift().side() == Side.OVER;
        return name(attention.place()) + (warms ? " warms, " : " cools, ")
                + side(attention.drift().side()) + " its " + band(attention.band()) + " about "
                + Days.day(attention.drift().on());
    }

    /** {@code trench unread 9 days}. */
    @Override
    public String unread(Attention.Unread attention) {
        return name(attention.place()) + " unread " + Counts.of(attention.days(), "day");
    }

    /** {@code porch froze to -4 C on 8 Jan, last on 10 Jan, 4 pots: keep cold, look for softness 24 Jan (?)}. */
    @Override
    public String frost(Attention.FrostThere attention) {
        String pots = Counts.of(attention.pots(), "pot");
        String there = said(attention.lowest()) + " on "
                + Days.andLast(attention.coldestOn(), attention.on(), Days::date) + ", " + pots;
        return attention
                .lookOn()
                .map(day -> name(attention.place()) + " froze to " + there + ": keep cold, look for softness "
                        + Days.date(day) + " (" + OriginMarks.mark(Origin.ASSUMED) + ")")
                .orElseGet(() -> name(attention.place()) + " down to " + there);
    }

    /** {@code cellar on trial: 5 of 7 days, all in its 2-9 C}; on the seventh {@code cellar passed its trial: 7 days in its 2-9 C}. */
    @Override
    public String trial(Attention.OnTrial attention) {
        Trial trial = attention.trial();
        if (trial.days() == 0) {
            return name(attention.place()) + " on trial: no day known for " + PlaceClimate.MOST_OF_A_DAY + " hours yet";
        }
        String inBand = " in its " + band(attention.band());
        if (!trial.isOver()) {
            String kept = trial.inBand() == trial.days() ? "all" : Integer.toString(trial.inBand());
            return name(attention.place()) + " on trial: " + trial.days() + " of " + Trial.DAYS + " days, " + kept
                    + inBand;
        }
        return trial.isPassed()
                ? name(attention.place()) + " passed its trial: " + Trial.DAYS + " days" + inBand
                : name(attention.place()) + " failed its trial: only " + trial.inBand() + " of " + Trial.DAYS + " days"
                        + inBand;
    }

    private static String side(Side side) {
        return side == Side.OVER ? "over" : "under";
    }

    private String band(Band band) {
        return Temperatures.say(band, journal.settings().temperatures());
    }

    private String said(Temperature temperature) {
        return Temperatures.say(temperature, journal.settings().temperatures());
    }

    private String name(Id<Place> place) {
        return journal.places().get(place).name();
    }
}
