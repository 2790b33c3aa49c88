// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import sillbook.model.Proposal;

/** Candidates while they are told apart by the pots of a plan: each is one pot's. */
final class Matching {
    private final List<Candidate> left;

    Matching(Collection<Candidate> candidates) {
        this.left = new ArrayList<>(candidates);
    }

    /** Those of which a plan has none yet. */
    static List<Candidate> without(Collection<Proposal> pots, Planning planning) {
        Matching matching = new Matching(planning.candidates());
        pots.forEach(matching::take);
        return matching.left();
    }

    /** One that the pot is of; no other pot is of it then. */
    Optional<Candidate> take(Proposal pot) {
        Optional<Candidate> found =
                left.stream().filter(candidate -> candidate.isOf(pot)).findFirst();
        found.ifPresent(left::remove);
        return found;
    }

    List<Candidate> left() {
        return List.copyOf(left);
    }
}
