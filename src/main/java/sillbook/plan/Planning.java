// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Stage;
import sillbook.model.Wish;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Outlook;

/**
 * What a season is planned with: the pots that could be made or are there, the places and the wishes.
 *
 * @param candidates pots that are growing or wait, then those that could be made
 * @param ended pots of the season whose winter is over
 * @param colds places where pots have their cold
 * @param rooms places where they flower: the warm ones, else the cool ones
 * @param wishes for days of the season, the earliest first
 * @param making what a pot would take that is still to be made
 */
public record Planning(
        Journal journal,
        Outlook outlook,
        Season season,
        List<Candidate> candidates,
        List<Candidate> ended,
        List<Berth> colds,
        List<Berth> rooms,
        List<Wish> wishes,
        Making making) {
    /** Pots every so many days, the middle of what is published: every 10 to 14 days (Iowa State University Extension). */
    public static final int EVERY_DAYS = 12;

    private static final int AT_ONCE = 2;
    private static final int POTTED_A_DAY = 4;
    private static final int WEEKS_TO_FIRST = 25;
    private static final int WEEKS_TO_LAST = 35;

    public Planning {
        candidates = List.copyOf(candidates);
        ended = List.copyOf(ended);
        colds = List.copyOf(colds);
        rooms = List.copyOf(rooms);
        wishes = List.copyOf(wishes);
    }

    /** For the season that is planned on the day of the outlook. */
    public static Planning of(Journal journal, Outlook outlook) {
        return of(journal, outlook, SeasonPlan.plannedOn(outlook.day(), journal));
    }

    public static Planning of(Journal journal, Outlook outlook, Season season) {
        double rim = CandidateReading.USUAL_RIM;
        List<Berth> colds = Berth.serving(Stage.COLD, rim, journal);
        List<Berth> warm = Berth.serving(Stage.WARM_ROOM, rim, journal);
        List<Berth> rooms = warm.isEmpty() ? Berth.serving(Stage.COOL_ROOM, rim, journal) : warm;
        Making making = new Making(journal, outlook, season, colds, days(season, journal));
        PotsThere there = new PotsThere(journal, outlook, season, making);
        return new Planning(
                journal,
                outlook,
                season,
                new CandidateReading(journal, outlook, season, making).list(there),
                there.ended(),
                colds,
                rooms,
                journal.wishes().all().stream()
                        .filter(wish -> wish.season().equals(season))
                        .sorted(Comparator.comparing(Wish::from).thenComparing(Wish::id))
                        .toList(),
                making);
    }

    public LocalDate today() {
        return outlook.day();
    }

    /** Whether a plan is made of the same things after the journal changed: the same pots, places and wishes. */
    public boolean isMadeOfTheSame(Planning other) {
        return candidates.equals(other.candidates)
                && ended.equals(other.ended)
                && colds.equals(other.colds)
                && rooms.equals(other.rooms)
                && wishes.equals(other.wishes);
    }

    /** One of the cold places. */
    Optional<Berth> cold(Id<Place> place) {
        return colds.stream().filter(berth -> berth.id().equals(place)).findFirst();
    }

    /** All days of the season. */
    public DaySpan days() {
        return days(season, journal);
    }

    private static DaySpan days(Season season, Journal journal) {
        MonthDay start = journal.settings().seasonStart();
        return DaySpan.of(season.firstDay(start), season.endExclusive(start));
    }

    /** The rule a first plan is made by: two pots every twelve days through the winter, on any day, four potted a day. */
    public Rule usualRule() {
        LocalDate first = days().start();
        return new Rule(
                AT_ONCE,
                EVERY_DAYS,
                first.plusWeeks(WEEKS_TO_FIRST),
                first.plusWeeks(WEEKS_TO_LAST),
                POTTED_A_DAY,
                Set.<DayOfWeek>of());
    }
}
