// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.SeasonPlan.Rule;
import sillbook.reckon.dates.DaySpan;
import sillbook.words.Days;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.Looking;

/** The rule a line plans by: so many pots every so many days; what it does not say is as usual. */
record RuleFacts(Filled filled) {
    private static final int MOST = 99;
    private static final int DAYS_IN_WEEK = 7;

    private static final Slot<Integer> EVERY = Slot.one(
            "days between",
            Senses.matching(
                    "every (\\d{1,6}) ?(days?|d|weeks?|w)",
                    said -> upTo(days(said), "days from one time to the next", "every 12 days")));
    private static final Slot<Integer> A_DAY = Slot.one(
            "",
            Senses.matching(
                    "(?:at most |pot )?(\\d{1,6})(?: pots?)? (?:a|each|per) day",
                    said -> upTo(said.number(1), "pots potted on a day", "4 a day")));
    private static final Slot<Integer> POTS = Slot.one(
            "number of pots",
            Senses.matching("(\\d{1,6})(?: pots?)?", said -> upTo(said.number(1), "pots at once", "2 every 12 days")));
    private static final Slot<Day> FROM =
            Slot.one("first day", new LedSense<>(List.of("from"), Senses.day(Looking.AHEAD)));
    private static final Slot<Day> TO =
            Slot.one("last day", new LedSense<>(List.of("to", "until", "till"), Senses.day(Looking.AHEAD)));
    private static final Slot<Set<DayOfWeek>> POTTING = Slot.one("", new PottingDaysSense());

    static final List<Slot<?>> SLOTS = List.of(EVERY, A_DAY, POTS, FROM, TO, POTTING);

    private static int days(Groups said) {
        return said.number(1) * (said.text(2).startsWith("w") ? DAYS_IN_WEEK : 1);
    }

    private static Heard<Integer> upTo(int number, String what, String example) {
        return number >= 1 && number <= MOST
                ? Heard.as(number)
                : Heard.not(
                        "1 to " + MOST,
                        "There are no " + number + " " + what + ". Write 1 to " + MOST + ", as: " + example + ".");
    }

    /** The rule, in days of a season; asks where they are none. */
    Optional<Rule> over(Rule usual, DaySpan season, Draft draft) {
        Optional<LocalDate> from = day(FROM, usual.from(), season, draft);
        Optional<LocalDate> to = day(TO, usual.to(), season, draft);
        return from.flatMap(first -> to.flatMap(last -> rule(usual, first, last, draft)));
    }

    private Optional<Rule> rule(Rule usual, LocalDate from, LocalDate to, Draft draft) {
        if (from.isAfter(to)) {
            draft.ask(
                    "ends before it begins",
                    "The plan would end on " + Days.full(to) + ", before it begins on " + Days.full(from)
                            + ". Write the first day first, as: from 20 dec to 1 mar.");
            return Optional.empty();
        }
        return Optional.of(new Rule(
                filled.get(POTS).orElse(usual.pots()),
                filled.get(EVERY).orElse(usual.everyDays()),
                from,
                to,
                filled.get(A_DAY).orElse(usual.pottedADay()),
                filled.get(POTTING).orElse(usual.pottingDays())));
    }

    /** A day without a year was not written for the season, so the year before and the one after will do too. */
    private Optional<LocalDate> day(Slot<Day> slot, LocalDate usual, DaySpan season, Draft draft) {
        LocalDate written = filled.get(slot).map(Day::likely).orElse(usual);
        Optional<LocalDate> inSeason = Stream.of(written, written.plusYears(1), written.minusYears(1))
                .filter(season::contains)
                .findFirst();
        if (inSeason.isEmpty()) {
            draft.ask(
                    "not in the season",
                    Days.full(written) + " is not in the season, which goes from " + Days.full(season.start()) + " to "
                            + Days.full(season.last()) + ". Write a day of it.");
        }
        return inSeason;
    }
}
