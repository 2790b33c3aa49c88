// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.season.Job;
import sillbook.season.PlaceNow;
import sillbook.words.Provisos;
import sillbook.words.Terms;

/** Places as JSON. */
public final class PlacesJson {
    private PlacesJson() {}

    /** The document of {@code sillbook places --json}. */
    public static String write(Journal journal, List<PlaceNow> places, Provisos provisos) {
        Named named = new Named(journal);
        return Answer.write(new Fields().list("places", places, now -> place(named, now)), provisos);
    }

    private static Fields place(Named named, PlaceNow now) {
        Place place = now.place();
        Optional<ColdDays> coldDays = Optional.of(place.coldDays()).filter(days -> !days.isAllYear());
        return new Fields()
                .text("place", place.name())
                .text("sort", Terms.SORTS.say(place.sort()))
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
                                .map(Terms.HAZARDS::say)
                                .toList())
                .written("light", place.light())
                .written("note", place.note());
    }

    private static Fields band(Band band) {
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
