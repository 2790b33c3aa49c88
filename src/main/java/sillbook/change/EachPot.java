// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.Collection;
import java.util.List;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Subject;

/** The same happening written down for each of several pots. */
final class EachPot {
    private EachPot() {}

    static List<Edit> happens(Journal journal, Hand hand, Collection<Id<Pot>> pots, Day day, Happening what) {
        return pots.stream()
                .map(pot -> hand.event(journal, new Subject.OfPot(pot), day, what))
                .<Edit>map(Edit.Put::new)
                .toList();
    }
}
