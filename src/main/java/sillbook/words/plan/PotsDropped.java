// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.words.Counts;
import sillbook.words.PotNames;

/** Says which pots go when a plan is adopted, and what is written about them. */
record PotsDropped(Journal journal, List<Id<Pot>> pots) {

    /** A sentence each; none where no pot goes. */
    List<String> says() {
        List<String> says = new ArrayList<>();
        if (!pots.isEmpty()) {
            says.add(new PotNames(journal).labels(pots) + ", never potted and not in this plan, "
                    + (pots.size() == 1 ? "goes." : "go."));
        }
        List<Id<Pot>> noted = pots.stream().filter(pot -> notes(pot) > 0).toList();
        if (!noted.isEmpty()) {
            says.add(saysNotes(noted));
        }
        return says;
    }

    /** {@code 2 notes about H4 H7 go with them.} */
    private String saysNotes(List<Id<Pot>> noted) {
        int notes = noted.stream().mapToInt(this::notes).sum();
        return Counts.of(notes, "note") + " about " + new PotNames(journal).labels(noted)
                + (notes == 1 ? " goes" : " go") + (noted.size() == 1 ? " with it." : " with them.");
    }

    private int notes(Id<Pot> pot) {
        long jotted = journal.history(pot).stream()
                .map(Event::what)
                .filter(what -> what instanceof Happening.Jotted)
                .count();
        return (int) jotted + (journal.pots().get(pot).note().isEmpty() ? 0 : 1);
    }
}
