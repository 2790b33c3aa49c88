// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.Optional;
import sillbook.model.SeasonPlan.Search;
import sillbook.plan.PlanNow;
import sillbook.plan.Seeking;
import sillbook.plan.Seeking.Found;
import sillbook.plan.Seeking.Missing;
import sillbook.plan.WishMet;
import sillbook.words.Counts;

/** The search for the best plan, as it is said: on its way, at its end, and of a plan that was kept. */
public final class SeekingWords {
    /** Where there is nothing to plan with. */
    public static final String NO_BULBS =
            "There are no bulbs that can flower in the season. Write down what you bought, as bought 10 Marrow Lane,"
                    + " or choose some on screen 6.";

    /** While it is looked for. */
    public static final String GOES_ON = "looking for the best plan";

    /** Where the journal is another now in what a plan is made of. */
    public static final String OVERTAKEN = "The search was stopped, since the journal changed; B looks anew.";

    private SeekingWords() {}

    /** {@code best so far: 7 days without bloom, 14 pots; cannot be under 5 days}. */
    public static String progress(Found best) {
        return "best so far: " + comesTo(best.comesTo())
                + bound(best.comesTo(), best.search())
                        .map(bound -> "; " + bound)
                        .orElse("");
    }

    /** Where it was ended before its end. */
    public static String stopped(Optional<Found> best) {
        return best.map(found -> "Stopped; the " + progress(found) + ".").orElse("Stopped; nothing was found yet.");
    }

    /** What came of it, a sentence or two. */
    public static String outcome(Seeking.Outcome outcome) {
        if (outcome instanceof Seeking.Best best) {
            return found(best.found());
        }
        if (outcome instanceof Seeking.Nothing nothing) {
            return missing(nothing.missing());
        }
        return "The search takes no season of that size: " + ((Seeking.TooMuch) outcome).why() + ".";
    }

    private static String found(Found found) {
        if (found.isProven()) {
            return "The best there is: " + comesTo(found.comesTo()) + ".";
        }
        String most = bound(found.comesTo(), found.search())
                .map(bound -> "; " + bound)
                .orElse("; whether another does as well with less is not proven");
        return "The best found: " + comesTo(found.comesTo()) + most + ".";
    }

    private static String missing(Missing missing) {
        return switch (missing) {
            case BULBS -> NO_BULBS;
            case ROOM -> "No place is written where pots flower. Write one down, as place kitchen sill.";
        };
    }

    /** {@code 7 days without bloom, 14 pots}; first of all that a wish is short, where one is. */
    static String comesTo(Search sums) {
        String gap = sums.gapDays() == 0 ? "no day without bloom" : Counts.of(sums.gapDays(), "day") + " without bloom";
        String unmet = sums.unmet() == 0 ? "" : "a wish is short, ";
        return unmet + gap + ", " + Counts.of(sums.pots(), "pot");
    }

    /** What no plan can go below, of the first sum in which this one does. */
    private static Optional<String> bound(Search comesTo, Search least) {
        if (comesTo.unmet() > least.unmet()) {
            return Optional.of("the wish could perhaps be met better");
        }
        if (comesTo.gapDays() > least.gapDays()) {
            return Optional.of("cannot be under " + Counts.of(least.gapDays(), "day"));
        }
        return comesTo.pots() > least.pots()
                ? Optional.of("cannot be under " + Counts.of(least.pots(), "pot"))
                : Optional.empty();
    }

    /**
     * Whether a plan is the best there is, for a column: {@code yes}; {@code no, within 1 day} of it in days without bloom, or in pots;
     * {@code by hand} where nobody searched, or it was changed since.
     */
    public static String proven(PlanNow now) {
        return now.plan().search().map(least -> proven(now, least)).orElse("by hand");
    }

    /** What dated wishes lack for which there are bulbs that suit. */
    private static int couldBeMet(PlanNow now) {
        return now.wishes().stream()
                .filter(met -> !met.wish().asks().isEveryDay() && met.latest().isPresent())
                .mapToInt(WishMet::lacks)
                .sum();
    }

    private static String proven(PlanNow now, Search least) {
        if (couldBeMet(now) > least.unmet()) {
            return "no, a wish is short";
        }
        int better = now.ribbon().gapDays() - least.gapDays();
        if (better > 0) {
            return "no, within " + Counts.of(better, "day");
        }
        int fewer = now.toMake() - least.pots();
        return fewer > 0 ? "no, within " + Counts.of(fewer, "pot") : "yes";
    }
}
