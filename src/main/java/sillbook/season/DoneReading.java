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

    List<Today.Done> list() {
        Map<Written, List<Subject>> together = new LinkedHashMap<>();
        journal.events().all().stream()
                .filter(event -> event.day().likely().equals(today))
                .sorted(Comparator.comparing(Event::writtenAt).thenComparing(Event.BY_HISTORY))
                .forEach(event -> together.computeIfAbsent(
                                new Written(event.writtenAt(), event.what()), written -> new ArrayList<>())
                        .add(event.subject()));
        List<Today.Done> done = new ArrayList<>();
        together.forEach((written, subjects) -> done.add(new Today.Done(written.at(), subjects, written.what())));
        return done;
    }
}
