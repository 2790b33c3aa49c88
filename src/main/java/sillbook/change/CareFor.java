// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.stream.Stream;
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
    public Stream<? extends Id<?>> names() {
        return pots.stream();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.inHand(journal, pots, day, hand)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(
                        Said.labels(journal, pots) + " " + Said.words(care),
                        EachPot.happens(journal, hand, pots, day, new Happening.Cared(care))));
    }
}
