// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.words.PotNames;

/** Says which pots of a plan are there already, and for which of them it means other days or places than are meant now. */
record PotsKept(Journal journal, SeasonPlan plan) {

    /** Without a full stop; empty where none is there. */
    Optional<String> says() {
        List<Proposal> there =
                plan.pots().stream().filter(pot -> pot.pot().isPresent()).toList();
        List<Proposal> anew = there.stream().filter(this::isMeantAnew).toList();
        String is = there.size() == 1 ? " is" : " are";
        return there.isEmpty()
                ? Optional.empty()
                : Optional.of(labels(there) + is + " there already" + how(there, anew));
    }

    private String how(List<Proposal> there, List<Proposal> anew) {
        boolean isOne = there.size() == 1;
        if (anew.isEmpty()) {
            return isOne ? " and keeps its days and places" : " and keep their days and places";
        }
        return anew.size() == there.size()
                ? (isOne ? " and gets" : " and get") + " new days or places"
                : ": " + labels(anew) + (anew.size() == 1 ? " gets" : " get")
                        + " new days or places, the rest keep theirs";
    }

    private boolean isMeantAnew(Proposal proposal) {
        return proposal.pot()
                .flatMap(pot -> Intention.of(pot, journal))
                .filter(meant -> meant.course().equals(proposal.course()))
                .isEmpty();
    }

    private String labels(List<Proposal> pots) {
        List<Id<Pot>> there = pots.stream().flatMap(pot -> pot.pot().stream()).toList();
        return new PotNames(journal).labels(there);
    }
}
