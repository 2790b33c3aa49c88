// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.Pot;

/** Pots go, and with them their entries and outcomes. */
public record RemovePots(List<Id<Pot>> pots) implements Change {
    public RemovePots {
        pots = List.copyOf(pots);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return pots.stream();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(Rules.somePots(pots), childless(journal))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(Said.labels(journal, pots) + " removed", edits(journal, pots)));
    }

    private Optional<Refusal> childless(Journal journal) {
        return journal.pots().all().stream()
                .filter(pot -> pot.parent().filter(pots::contains).isPresent() && !pots.contains(pot.id()))
                .findFirst()
                .flatMap(heir -> Rules.refuse("Its plant lives on as " + heir.label() + " of season "
                        + journal.nameOf(heir.season()) + ". Remove that pot first."));
    }

    /** All that goes with pots, and they. */
    static List<Edit> edits(Journal journal, List<Id<Pot>> pots) {
        List<Edit> edits = new ArrayList<>();
        journal.outcomes().all().stream()
                .filter(outcome -> pots.contains(outcome.pot()))
                .forEach(outcome -> edits.add(new Edit.Remove(outcome)));
        journal.wishes().all().stream()
                .filter(wish -> wish.pots().stream().anyMatch(pots::contains))
                .forEach(wish -> edits.add(new Edit.Put(wish.without(pots))));
        journal.seasonPlans().all().stream()
                .filter(plan -> plan.refersTo().anyMatch(pots::contains))
                .forEach(plan -> edits.add(new Edit.Put(plan.without(pots))));
        for (Id<Pot> pot : pots) {
            Intention.of(pot, journal).ifPresent(meant -> edits.add(new Edit.Remove(meant)));
            journal.history(pot).forEach(event -> edits.add(new Edit.Remove(event)));
            edits.add(new Edit.Remove(journal.pots().get(pot)));
        }
        return edits;
    }
}
