// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Subject;

/**
 * Pots are looked at.
 *
 * @param found what was seen, pot by pot; kept in the terms of the way each is grown
 * @param round the place whose round this is; every pot that stands there is then in {@code found}
 */
public record Check(Map<Id<Pot>, Findings> found, Optional<Id<Place>> round, Day day) implements Change {
    public Check {
        found = Collections.unmodifiableMap(new LinkedHashMap<>(found));
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.concat(found.keySet().stream(), round.stream());
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.growing(journal, found.keySet(), day, hand)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(name(journal), edits(journal, hand)));
    }

    private List<Edit> edits(Journal journal, Hand hand) {
        List<Edit> edits = new ArrayList<>();
        found.forEach((pot, findings) -> edits.add(new Edit.Put(hand.event(
                journal,
                new Subject.OfPot(pot),
                day,
                seen(findings, journal.pots().get(pot))))));
        return edits;
    }

    private static Happening seen(Findings findings, Pot pot) {
        return new Happening.Checked(findings.in(pot.way()));
    }

    private String name(Journal journal) {
        Collection<Id<Pot>> pots = found.keySet();
        return round.map(place -> "round of " + Said.place(journal, place) + ", " + Said.plural(pots.size(), "pot"))
                .orElseGet(() -> Said.labels(journal, pots) + " checked");
    }
}
