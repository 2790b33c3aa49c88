// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Pot;
import sillbook.model.Subject;
import sillbook.words.Days;
import sillbook.words.Looking;

/**
 * Entries pointed at by whose they are, their sort and perhaps their day.
 *
 * @param day the day of the one meant; empty for the last
 */
record EntryNamed(Filled filled, Optional<Day> day) {
    static final Slot<EntrySort> SORT = Slot.one("sort of entry", Senses.oneOf(EntrySort.WORDS));
    static final Slot<Day> DAYS = Slot.many("day", Senses.day(Looking.BACK));

    /** One entry of each subject; asks where there is none. */
    List<Event> find(Draft draft) {
        List<Event> events = new ArrayList<>();
        List<Pot> pots = Slots.pots(filled);
        Optional<EntrySort> sort = filled.get(SORT);
        if (sort.isEmpty()) {
            draft.ask("which entry?", "Which entry? Write its sort, as potted, moved, checked, first flower or noted.");
            return events;
        }
        pots.forEach(pot -> find(new Subject.OfPot(pot.id()), pot.label(), sort.get(), draft)
                .ifPresent(events::add));
        if (pots.isEmpty()) {
            filled.get(Slots.PLACE)
                    .ifPresentOrElse(
                            place -> find(new Subject.OfPlace(place.id()), "the " + place.name(), sort.get(), draft)
                                    .ifPresent(events::add),
                            () -> Lines.pots(pots, draft));
        }
        return events;
    }

    private Optional<Event> find(Subject subject, String whose, EntrySort sort, Draft draft) {
        Optional<Event> last = draft.bench().journal().history(subject).stream()
                .filter(sort::is)
                .filter(event ->
                        day.isEmpty() || day.get().likely().equals(event.day().likely()))
                .reduce((earlier, later) -> later);
        if (last.isEmpty()) {
            String on = day.map(given -> " on " + Days.full(given)).orElse("");
            draft.ask(
                    "no such entry",
                    "The book has no entry of " + whose + ", " + EntrySort.WORDS.say(sort) + on
                            + ". Look in its history.");
        }
        return last;
    }
}
