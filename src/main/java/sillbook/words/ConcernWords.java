// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.handbook.Origin;
import sillbook.model.Journal;
import sillbook.model.Place.Hazard;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Concern;
import sillbook.season.Destination;

/** What the grower should know of a pot, as sentences. */
public record ConcernWords(Journal journal) implements Concern.Cases<String> {
    private static final int DAYS_TOLD_AS_WEEKS = 4;

    public String say(Concern concern) {
        return concern.fold(this);
    }

    @Override
    public String ofSchedule(Concern.OfSchedule concern) {
        return concern.warning().fold(new WarningWords());
    }

    /** {@code Shoot 9 cm, but half a week short of cold: it is too warm here. Move it colder, do not bring it in.} */
    @Override
    public String tooWarmHere(Concern.TooWarmHere concern) {
        String shoot =
                "Shoot " + Lengths.say(concern.shoot(), journal.settings().lengths());
        String weeks = shortBy(concern.daysShort());
        String colder = concern.colder().map(place -> " " + colder(place)).orElse("");
        return shoot + ", but " + weeks + " short of cold: it is too warm here. Move it colder, do not bring it in."
                + colder;
    }

    /** Days, where they make no half week. */
    private static String shortBy(int days) {
        return days < DAYS_TOLD_AS_WEEKS ? Counts.of(days, "day") : Weeks.sayDays(days);
    }

    private String colder(Destination destination) {
        String room = destination
                .left()
                .map(left -> " and has room for " + left + " more")
                .orElse("");
        return "The " + journal.places().get(destination.place()).name() + " is colder" + room + ".";
    }

    @Override
    public String notCold(Concern.NotCold concern) {
        return "The " + journal.places().get(concern.place()).name() + " is not cold before "
                + Days.date(concern.from()) + ": until then nothing counts.";
    }

    @Override
    public String coldEnds(Concern.ColdEnds concern) {
        return "The " + journal.places().get(concern.place()).name() + " is no longer cold from "
                + Days.date(concern.endsOn()) + ", " + shortBy(concern.daysShort()) + " too early.";
    }

    /** {@code The trench did not pass 1 C in its first 2 weeks: roots hardly grow so near freezing. Look for them before it comes in.} */
    @Override
    public String coldToRoot(Concern.ColdToRoot concern) {
        String highest = Temperatures.say(concern.highest(), journal.settings().temperatures());
        return "The " + journal.places().get(concern.place()).name() + " did not pass " + highest
                + " in its first 2 weeks: roots hardly grow so near freezing. Look for them before it comes in.";
    }

    /** {@code Held back: the cellar ran warm, 13 weeks in, about 11 cold enough; enough about Tue 26 Jan.} */
    @Override
    public String heldBack(Concern.HeldBack concern) {
        return "Held back: the " + journal.places().get(concern.place()).name()
                + (concern.ranWarm() ? " ran warm, " : " was too cold, ")
                + PotWords.cold(concern.daysIn(), concern.daysColdEnough()) + "; enough about "
                + Days.day(concern.enoughOn()) + ".";
    }

    /** {@code Warm spell: the cellar was above 13 C from 12 to 15 Dec, up to 14.8 C; watch for short stems or blasted buds (?).} */
    @Override
    public String warmSpell(Concern.WarmSpell concern) {
        TemperatureUnit unit = journal.settings().temperatures();
        DaySpan days = concern.days();
        return "Warm spell: the " + journal.places().get(concern.place()).name() + " was above "
                + Temperatures.say(concern.above(), unit) + " from "
                + Days.fromTo(days.start(), days.last()) + ", up to "
                + Temperatures.say(concern.highest(), unit) + "; watch for short stems or blasted buds ("
                + OriginMarks.mark(Origin.ASSUMED) + ").";
    }

    /** {@code The porch froze to -4 C on Sun 10 Jan: keep it cold, do not warm it. Look for softness on Sun 24 Jan (?).} */
    @Override
    public String frozen(Concern.Frozen concern) {
        String lowest = Temperatures.say(concern.lowest(), journal.settings().temperatures());
        String place = "The " + journal.places().get(concern.place()).name();
        String on = lowest + " on " + Days.andLast(concern.coldestOn(), concern.on(), Days::day);
        return concern.lookOn()
                .map(day -> place + " froze to " + on + ": keep it cold, do not warm it. Look for softness on "
                        + Days.day(day) + " (" + OriginMarks.mark(Origin.ASSUMED) + ").")
                .orElseGet(() -> place + " was down to " + on + ": a little frost does no harm yet; watch it.");
    }

    @Override
    public String pastUseBy(Concern.PastUseBy concern) {
        return "Past its use-by day, " + Days.day(concern.useBy()) + ": stems grow long and weak.";
    }

    @Override
    public String besideHazard(Concern.BesideHazard concern) {
        String place = journal.places().get(concern.place()).name();
        return "The " + place + " holds " + PlaceTerms.HAZARDS.say(concern.hazard()) + " too: "
                + harm(concern.hazard());
    }

    private static String harm(Hazard hazard) {
        return switch (hazard) {
            case FRUIT -> "its gas kills the buds.";
            case ROTTING_BULBS -> "their gas kills the buds, take them out.";
            case FUMES -> "they can kill the buds, air it.";
            default -> "label the bulbs, nobody must eat them.";
        };
    }

    @Override
    public String assumedFigures(Concern.AssumedFigures concern) {
        return "The handbook does not know " + concern.kind() + "; figures for hardy bulbs are assumed (?).";
    }
}
