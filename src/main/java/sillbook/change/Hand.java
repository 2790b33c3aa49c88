// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Subject;

/**
 * The hand that writes: when it writes, and the ids it gives.
 *
 * @param now the instant of writing
 * @param today the journal's day at that instant
 */
public record Hand(Instant now, LocalDate today, Ids ids) {

    /** A new event, written after those the subject already has on that day. */
    Event event(Journal journal, Subject subject, Day day, Happening what) {
        return event(subject, day, nextOrder(journal, subject, day), what);
    }

    Event event(Subject subject, Day day, int order, Happening what) {
        Id<Event> id = ids.next();
        return new Event(id, subject, day, order, now, Optional.empty(), what);
    }

    private static int nextOrder(Journal journal, Subject subject, Day day) {
        return journal.history(subject).stream()
                .filter(event -> event.day().likely().equals(day.likely()))
                .mapToInt(event -> event.order() + 1)
                .max()
                .orElse(0);
    }
}
