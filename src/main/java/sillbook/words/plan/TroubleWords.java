// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Proposal;
import sillbook.model.Temperature;
import sillbook.plan.PlanNow;
import sillbook.plan.Trouble;
import sillbook.plan.Trouble.Cure;
import sillbook.text.Initial;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.Temperatures;
import sillbook.words.Weeks;

/** What a plan cannot do, as it is said: a sentence of what is wrong, and one of what would cure it. */
public record TroubleWords(PlanNow now, Journal journal) {
    private static final double TENTHS = 10;

    /** {@code Gap 21-27 Feb, 7 days: a pot cold by 25 Oct would flower then; no bulbs left.} */
    public String says(Trouble trouble) {
        return switch (trouble.sort()) {
            case NO_ROOM ->
                place(trouble) + " " + days(trouble) + ": " + Counts.of(trouble.needed(), "pot") + ", and room for "
                        + trouble.had() + ".";
            case COLD_TOO_SHORT ->
                pot(trouble) + ": " + Weeks.sayDays(trouble.had()) + " cold by "
                        + Days.date(course(trouble).in()) + ", it needs about " + Weeks.sayDays(trouble.needed()) + ".";
            case COLD_TOO_LONG ->
                pot(trouble) + ": " + Weeks.sayDays(trouble.had()) + " in the cold; more than "
                        + Weeks.number(trouble.needed() / 7.0) + " may harm it.";
            case NO_COLD_PLACE -> pot(trouble) + ": no place for its " + Weeks.sayDays(trouble.needed()) + " of cold.";
            case WOULD_FREEZE -> pot(trouble) + ": the " + at(trouble) + " may get below " + degrees(trouble) + ".";
            case POTTING_DAY -> pottingDay(trouble);
            case BULBS_SHORT ->
                names().bulbs(now.plan().pots().get(number(trouble)).variety(), trouble.needed()) + " are planned, and "
                        + trouble.had() + " are to be had.";
            case POTTED_TOO_LATE -> tooLate(trouble);
            case NOT_THERE -> pot(trouble) + ": the " + at(trouble) + " is not there all of " + days(trouble) + ".";
            case GAP -> "Gap " + days(trouble) + ", " + Counts.of(trouble.needed(), "day") + ": " + why(trouble) + ".";
            case WISH -> "Wish " + days(trouble) + ", " + lacks(trouble) + ": " + why(trouble) + ".";
        };
    }

    /** {@code Cure: e to the cellar.} The first of them. */
    public String cure(Trouble trouble) {
        return "Cure: " + cures(trouble).get(0) + ".";
    }

    /** What would help, a phrase each, the least change first; at least one. */
    public List<String> cures(Trouble trouble) {
        return new CureWords(names()).all(trouble);
    }

    /** Both sentences. */
    public List<String> lines(Trouble trouble) {
        return List.of(says(trouble), cure(trouble));
    }

    private PlanNames names() {
        return new PlanNames(journal, now.plan());
    }

    private String pot(Trouble trouble) {
        return names().whole(number(trouble));
    }

    private static int number(Trouble trouble) {
        return trouble.pots().iterator().next();
    }

    private Proposal.Course course(Trouble trouble) {
        return now.plan().pots().get(number(trouble)).course();
    }

    private String at(Trouble trouble) {
        return trouble.place().map(new PotNames(journal)::place).orElse("");
    }

    private String place(Trouble trouble) {
        return Initial.large(at(trouble));
    }

    private static String days(Trouble trouble) {
        return trouble.days().map(Days::span).orElse("");
    }

    private String degrees(Trouble trouble) {
        return Temperatures.say(
                Temperature.ofCelsius(trouble.needed() / TENTHS),
                journal.settings().temperatures());
    }

    private static String pottingDay(Trouble trouble) {
        String day = trouble.days().map(days -> Days.day(days.start())).orElse("");
        String pots = Counts.of(trouble.needed(), "pot") + " to be potted";
        return trouble.had() == 0
                ? day + ": " + pots + ", on a day that is not for potting."
                : day + ": " + pots + ", and hands for " + trouble.had() + " a day.";
    }

    private String tooLate(Trouble trouble) {
        return pot(trouble) + ": should be potted "
                + Days.day(course(trouble).potting(), now.ribbon().days()) + ", and cannot be before "
                + Days.date(now.pots().get(number(trouble)).candidate().readyFrom()) + ".";
    }

    private static String lacks(Trouble trouble) {
        return trouble.needed() - trouble.had() + " short";
    }

    /** What stands in the way, by what would help first. */
    private String why(Trouble trouble) {
        Optional<Cure> first = trouble.cures().stream().findFirst();
        if (first.isPresent() && first.get() instanceof Trouble.OneMore more) {
            return names().bulbs(more.variety(), more.bulbs()) + " are in no pot yet";
        }
        if (first.isPresent() && first.get() instanceof Trouble.Buy buy) {
            String done = buy.potted().equals(buy.in()) ? "potted" : "cold";
            return "a pot " + done + " by " + Days.date(buy.potted()) + " would flower then; no bulbs left";
        }
        if (first.isPresent() && first.get() instanceof Trouble.MoreRoom room) {
            return "no room for one more pot at the " + new PotNames(journal).place(room.place());
        }
        return trouble.sort() == Trouble.Sort.WISH
                ? "no bulbs that suit it can flower then"
                : "no bulbs of the season can flower then";
    }
}
