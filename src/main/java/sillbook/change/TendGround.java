// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Happening;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Subject;

/** Something is done to the ground of a place: it is dug, or covered for the winter. */
public record TendGround(Id<Place> place, Care care, Day day) implements Change {
    public TendGround {
        if (care != Care.DUG && care != Care.COVERED) {
            throw new IllegalArgumentException(care + " is not done to a place");
        }
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.of(place);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.hasHappened(day, hand)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(
                        Said.place(journal, place) + " " + Said.words(care),
                        List.of(new Edit.Put(
                                hand.event(journal, new Subject.OfPlace(place), day, new Happening.Cared(care))))));
    }
}
