// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.AdoptPlan;
import sillbook.model.Journal;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.plan.WishMet;
import sillbook.words.Counts;
import sillbook.words.Days;

/** What adopting a plan would do, as it is said before it is done. */
public record AdoptWords(Journal journal, PlanNow now) {

    /** A sentence each. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(made());
        goingOn().ifPresent(lines::add);
        bulbs().ifPresent(lines::add);
        wishes().ifPresent(lines::add);
        before().ifPresent(lines::add);
        return lines;
    }

    private List<Proposal> pots() {
        return now.plan().pots();
    }

    private String made() {
        int made = now.toMake();
        return made == 0
                ? "No pot is made: all of them are there."
                : Counts.of(made, "pot") + (made == 1 ? " gets its label and waits" : " get their labels and wait")
                        + " to be potted, each with its days and places.";
    }

    private Optional<String> goingOn() {
        int there = pots().size() - now.toMake();
        return there == 0
                ? Optional.empty()
                : Optional.of(Counts.of(there, "pot")
                        + (there == 1 ? " that is there already goes on" : " that are there already go on")
                        + " by the plan's days.");
    }

    private Optional<String> bulbs() {
        int kept = bulbs(true);
        int missing = bulbs(false);
        if (kept + missing == 0) {
            return Optional.empty();
        }
        String lacking = missing == 0 ? "" : Counts.of(missing, "bulb") + " for them are in no purchase yet.";
        return Optional.of(
                kept == 0 ? lacking : join(Counts.of(kept, "bulb") + " of purchases are kept for them.", lacking));
    }

    private static String join(String first, String second) {
        return second.isEmpty() ? first : first + " " + second;
    }

    private int bulbs(boolean isBought) {
        return pots().stream()
                .filter(pot -> pot.pot().isEmpty() && pot.purchase().isPresent() == isBought)
                .mapToInt(Proposal::bulbs)
                .sum();
    }

    private Optional<String> wishes() {
        List<WishMet> dated = now.wishes().stream()
                .filter(wish -> !wish.wish().asks().isEveryDay())
                .toList();
        long met = dated.stream().filter(wish -> !wish.pots().isEmpty()).count();
        return dated.isEmpty()
                ? Optional.empty()
                : Optional.of("Wishes for a day that have pots meant for them: " + met + " of " + dated.size() + ".");
    }

    /** What the plan adopted until now would lose. */
    private Optional<String> before() {
        return SeasonPlan.of(now.plan().season(), journal).stream()
                .filter(other -> other.adopted().isPresent()
                        && !other.id().equals(now.plan().id()))
                .findFirst()
                .map(other -> "Plan " + other.name() + ", adopted on "
                        + other.adopted().map(Days::date).orElse("") + ", is laid aside" + dropped() + ".");
    }

    private String dropped() {
        int gone = AdoptPlan.dropped(journal, now.plan()).size();
        String never = gone == 1 ? " of it that was never potted goes" : " of it that were never potted go";
        return gone == 0 ? "" : ", and " + Counts.of(gone, "pot") + never;
    }
}
