// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.AdoptPlan;
import sillbook.model.Journal;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.plan.WishMet;
import sillbook.text.Initial;
import sillbook.words.Counts;
import sillbook.words.Days;

/** What adopting a plan would do, as it is said before it is done. */
public record AdoptWords(Journal journal, PlanNow now) {

    /** A sentence each: what comes of it, and what would be gone. */
    public List<String> lines() {
        return Stream.concat(comes().stream(), goes().stream()).toList();
    }

    /** What comes of it, a sentence each. */
    public List<String> comes() {
        return facts().stream().map(fact -> Initial.large(fact) + ".").toList();
    }

    /** The same without a full stop. */
    public List<String> facts() {
        List<String> facts = new ArrayList<>();
        facts.add(made());
        new PotsKept(journal, now.plan()).says().ifPresent(facts::add);
        bulbs().ifPresent(facts::add);
        wishes().ifPresent(facts::add);
        before().ifPresent(facts::add);
        return facts;
    }

    /** What would be gone, a sentence each. */
    public List<String> goes() {
        return new PotsDropped(journal, AdoptPlan.dropped(journal, now.plan())).says();
    }

    private List<Proposal> pots() {
        return now.plan().pots();
    }

    private String made() {
        int made = now.toMake();
        return made == 0
                ? "no pot is made: all of them are there"
                : Counts.of(made, "pot") + (made == 1 ? " gets its label and waits" : " get their labels and wait")
                        + " to be potted, each with its days and places";
    }

    private Optional<String> bulbs() {
        int kept = bulbs(true);
        int missing = bulbs(false);
        List<String> says = new ArrayList<>();
        if (kept > 0) {
            says.add(Counts.of(kept, "bulb") + " of purchases are kept for them");
        }
        if (missing > 0) {
            says.add(Counts.of(missing, "bulb") + " for them are in no purchase yet");
        }
        return says.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", says));
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
                : Optional.of("wishes for a day that have pots meant for them: " + met + " of " + dated.size());
    }

    private Optional<String> before() {
        return SeasonPlan.of(now.plan().season(), journal).stream()
                .filter(other -> other.adopted().isPresent()
                        && !other.id().equals(now.plan().id()))
                .findFirst()
                .map(other -> "plan " + other.name() + ", adopted on "
                        + other.adopted().map(Days::date).orElse("") + ", is laid aside");
    }
}
