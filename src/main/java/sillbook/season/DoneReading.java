// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Journal;
import sillbook.model.Subject;

/** Gathers what was done on a day; what was written for several pots at once is one thing. */
record DoneReading(Journal journal, LocalDate today) {

    private record Written(Instant at, Happening what) {}

    /** What was written at once stands in the order of labels, what is about no pot before it. */
    private Comparator<Event> byWriting() {
        return Comparator.comparing(Event::writtenAt)
                .thenComparing(this::label, ByLabel.OF_LABELS)
                .thenComparing(Event.BY_HISTORY);
    }

    private String label(Event event) {
        return event.subject()
                .asPot()
                .map(pot -> journal.pots().get(pot).label())
                .orElse("");
    }

    List<Today.Done> list() {
        Map<Written, List<Subject>> together = new LinkedHashMap<>();
        journal.events().all().stream()
                .filter(event -> event.day().likely().equals(today))
                .sorted(byWriting())
                .forEach(event -> together.computeIfAbsent(
                                new Written(event.writtenAt(), event.what()), written -> new ArrayList<>())
                        .add(event.subject()));
        List<Today.Done> done = new ArrayList<>();
        together.forEach((written, subjects) -> done.add(new Today.Done(written.at(), subjects, written.what())));
        return done;
    }
}
