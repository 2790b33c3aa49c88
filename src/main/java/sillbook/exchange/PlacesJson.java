// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Job;
import sillbook.season.Outlook;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceClimate.Drift;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceClimate.SoFar;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.PlaceNow;
import sillbook.words.PlaceTerms;
import sillbook.words.Provisos;
import sillbook.words.Terms;

/** Places as JSON. */
public final class PlacesJson {
    private PlacesJson() {}

    /** The document of {@code sillbook places --json}. */
    public static String write(Journal journal, Outlook outlook, Provisos provisos) {
        Named named = new Named(journal);
        Fields all = new Fields()
                .list(
                        "places",
                        outlook.places(),
                        now -> warmth(
                                place(named, now),
                                PlaceClimate.of(journal, now.place().id(), outlook.day()),
                                journal.settings().zone()));
        return Answer.write(all, provisos);
    }

    private static Fields warmth(Fields fields, PlaceClimate climate, ZoneId zone) {
        Optional<SoFar> season = climate.season();
        Optional<Strayed> out = climate.strayed();
        return fields.object("bandC", climate.band(), PlacesJson::band)
                .decimal("latestC", climate.now().map(last -> last.temperature().celsius()))
                .text("latestAt", climate.now().map(last -> last.at().toString()))
                .day("lastReadOn", climate.lastReadOn(zone))
                .object("weekC", climate.week(), PlacesJson::band)
                .text("outOfBand", out.map(Strayed::side).map(PlacesJson::side))
                .day("outSince", out.map(Strayed::since))
                .decimal("outHours", out.map(Strayed::hours))
                .decimal("changeCPerDay", climate.drift().map(Drift::perDay))
                .day("outOn", climate.drift().map(Drift::on))
                .day("readSince", season.map(SoFar::since))
                .decimal("readShare", season.map(SoFar::share))
                .whole("daysOver", season.map(SoFar::daysOver))
                .whole("daysUnder", season.map(SoFar::daysUnder))
                .whole("daysFreezing", season.map(SoFar::daysUnderZero))
                .list("gaps", season.map(SoFar::gaps).orElse(List.of()), PlacesJson::gap);
    }

    private static String side(Side side) {
        return side.name().toLowerCase(Locale.ROOT);
    }

    private static Fields gap(DaySpan gap) {
        return new Fields().day("from", gap.start()).day("untilExclusive", gap.endExclusive());
    }

    private static Fields place(Named named, PlaceNow now) {
        Place place = now.place();
        Optional<ColdDays> coldDays = Optional.of(place.coldDays()).filter(days -> !days.isAllYear());
        return new Fields()
                .text("place", place.name())
                .text("sort", PlaceTerms.SORTS.say(place.sort()))
                .text("serves", Terms.STAGES.say(place.serves()))
                .object("usualC", place.usual(), PlacesJson::band)
                .object("coldDays", coldDays, PlacesJson::days)
                .flag("coldToday", now.isCold())
                .whole("room", place.room())
                .texts("pots", named.labels(now.pots()))
                .number("inTwoWeeks", now.inTwoWeeks().size())
                .whole("leftInTwoWeeks", now.leftInTwoWeeks())
                .texts("keptForWantOfRoom", named.labels(now.kept()))
                .whole("checkEveryDays", Optional.of(place.checkEveryDays()).filter(days -> days > 0))
                .day("lastRound", now.round().map(Job.Round::last))
                .day("nextRound", now.round().map(Job.Round::on))
                .texts(
                        "hazards",
                        place.hazards().stream()
                                .sorted()
                                .map(PlaceTerms.HAZARDS::say)
                                .toList())
                .written("light", place.light())
                .written("note", place.note());
    }

    static Fields band(Band band) {
        return new Fields()
                .number("low", band.low().celsius())
                .number("high", band.high().celsius());
    }

    /** Months and days as ISO 8601 writes them without a year. */
    private static Fields days(ColdDays days) {
        return new Fields()
                .text("from", days.from().toString())
                .text("untilExclusive", days.untilExclusive().toString());
    }
}
