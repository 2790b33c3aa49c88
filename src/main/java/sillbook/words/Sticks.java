// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Batch;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.season.Outlook;

/** Sticks of some pots, those that are alike together. */
public record Sticks(Journal journal, Outlook outlook) {

    /** A stick for each pot, or for those of a batch that say the same. */
    public List<Stick> of(List<Id<Pot>> pots) {
        Map<Alike, List<Id<Pot>>> together = new LinkedHashMap<>();
        pots.forEach(pot ->
                together.computeIfAbsent(alike(pot), none -> new ArrayList<>()).add(pot));
        return together.values().stream()
                .map(some -> Stick.of(journal, some, outlook.pot(some.get(0))))
                .toList();
    }

    /** One for each pot, though others of its batch say the same. */
    public List<Stick> single(List<Id<Pot>> pots) {
        return pots.stream()
                .map(pot -> Stick.of(journal, List.of(pot), outlook.pot(pot)))
                .toList();
    }

    /** Those of pots that were potted since an earlier moment of the journal. */
    public List<Stick> pottedSince(Journal before) {
        return of(journal.pots().all().stream()
                .map(Pot::id)
                .filter(pot -> journal.isPotted(pot) && !before.isPotted(pot))
                .toList());
    }

    private Alike alike(Id<Pot> pot) {
        Pot made = journal.pots().get(pot);
        String says = String.join(
                ", ", Stick.of(journal, List.of(pot), outlook.pot(pot)).ahead());
        return new Alike(made.batch(), made.batch().isPresent() ? Optional.empty() : Optional.of(pot), says);
    }

    /** What pots must have in common to share a stick's line; one of no batch shares with none. */
    private record Alike(Optional<Id<Batch>> batch, Optional<Id<Pot>> alone, String says) {}
}
