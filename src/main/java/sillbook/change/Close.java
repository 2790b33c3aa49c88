// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;

/** The winter of some pots ends. */
public record Close(List<Id<Pot>> pots, End end, String note, Day day) implements Change {
    public Close {
        pots = List.copyOf(pots);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return pots.stream();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(Rules.somePots(pots), Rules.hasHappened(day, hand), Ending.refuseAgain(journal, pots))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(
                        Said.labels(journal, pots) + " " + Said.words(end),
                        EachPot.happens(journal, hand, pots, day, new Happening.Closed(end, note))));
    }
}
