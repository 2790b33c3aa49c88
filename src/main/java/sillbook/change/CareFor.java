// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;

/** Something is done to pots that changes no stage. */
public record CareFor(List<Id<Pot>> pots, Care care, Day day) implements Change {
    public CareFor {
        pots = List.copyOf(pots);
    }

    @Override
    public Decision on(Journal journal, Hand hand) {
        return Rules.growing(journal, pots, day, hand)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(
                        Said.labels(journal, pots) + " " + Said.words(care),
                        EachPot.happens(journal, hand, pots, day, new Happening.Cared(care))));
    }
}
