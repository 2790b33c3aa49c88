// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;

/** Pots are carried to a place, and are in that stage from then on. */
public record Move(List<Id<Pot>> pots, Id<Place> place, Stage stage, Day day) implements Change {
    public Move {
        pots = List.copyOf(pots);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.concat(pots.stream(), Stream.of(place));
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.growing(journal, pots, day, hand)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, hand));
    }

    private Step step(Journal journal, Hand hand) {
        String name = Said.labels(journal, pots) + " " + Said.into(stage) + ", " + Said.place(journal, place);
        return new Step(name, EachPot.happens(journal, hand, pots, day, new Happening.Moved(place, stage)));
    }
}
