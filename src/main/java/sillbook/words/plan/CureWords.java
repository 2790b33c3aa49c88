// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.util.List;
import sillbook.plan.Trouble;
import sillbook.plan.Trouble.Cure;
import sillbook.words.Days;
import sillbook.words.PotNames;

/** What would cure what a plan cannot do, as it is said. */
record CureWords(PlanNames names) {

    /** A phrase each, without a full stop; what can be done by hand where the plan knows nothing better. */
    List<String> all(Trouble trouble) {
        return trouble.cures().isEmpty()
                ? List.of(byHand(trouble))
                : trouble.cures().stream().map(cure -> say(cure, trouble)).toList();
    }

    private String say(Cure cure, Trouble trouble) {
        if (cure instanceof Trouble.StandAt to) {
            return names.mark(to.pot()) + " to the " + place(to);
        }
        if (cure instanceof Trouble.BringIn later) {
            return "bring " + names.mark(later.pot()) + " in on " + Days.day(later.day()) + later(trouble, later);
        }
        if (cure instanceof Trouble.PotBy by) {
            return "pot " + names.mark(by.pot()) + " by " + Days.day(by.day());
        }
        if (cure instanceof Trouble.OneMore more) {
            return "one more pot, " + names.bulbs(more.variety(), more.bulbs()) + ", brought in on "
                    + Days.day(more.in());
        }
        if (cure instanceof Trouble.Buy buy) {
            String in = buy.potted().equals(buy.in()) ? "" : ", bring them in on " + Days.date(buy.in());
            return "buy " + names.bulbs(buy.variety(), buy.bulbs()) + ", pot them by " + Days.day(buy.potted()) + in;
        }
        if (cure instanceof Trouble.MoreRoom room) {
            return "room for " + room.pots() + " more at the " + new PotNames(names.journal()).place(room.place())
                    + ", or another place or day";
        }
        return "choose another sort for it, or wish for other days";
    }

    private String place(Trouble.StandAt to) {
        return new PotNames(names.journal()).place(to.place());
    }

    private String later(Trouble trouble, Trouble.BringIn to) {
        LocalDate now = names.plan().pots().get(to.pot()).course().in();
        return trouble.pots().contains(to.pot()) && now.isBefore(to.day()) ? ", not before" : "";
    }

    private static String pottingDay(Trouble trouble) {
        return trouble.had() == 0
                ? "bring " + (trouble.needed() == 1 ? "it" : "them") + " in on another day, or pot on that day too"
                : "bring some in on another day, or allow more pots on a day";
    }

    private String byHand(Trouble trouble) {
        return switch (trouble.sort()) {
            case COLD_TOO_LONG -> "pot it later, or bring it in sooner";
            case NO_COLD_PLACE -> "bring it in later, or write down a place that is cold for so long";
            case WOULD_FREEZE -> "another place in the cold, or one that is warmed in frost";
            case POTTING_DAY -> pottingDay(trouble);
            case POTTED_TOO_LATE, COLD_TOO_SHORT -> "leave it out, or take a sort that needs less cold";
            case BULBS_SHORT -> "plan anew with the bulbs that are here, or buy the rest";
            case NOT_THERE -> "another place, or other days";
            case NO_ROOM -> "another place or day for some of them";
            case GAP, WISH -> "choose another sort for it, or wish for other days";
        };
    }
}
