// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import sillbook.model.Event;
import sillbook.model.Journal;
import sillbook.words.DiaryEntry;

/** The diary as JSON. */
public final class DiaryJson {
    private final Named named;

    private DiaryJson(Named named) {
        this.named = named;
    }

    /** The document of {@code sillbook diary --json}. */
    public static String write(Journal journal, List<DiaryEntry> entries) {
        DiaryJson json = new DiaryJson(new Named(journal));
        return Answer.write(new Fields().list("entries", entries, json::entry));
    }

    private Fields entry(DiaryEntry entry) {
        return new Fields()
                .happened("day", entry.day())
                .day("writtenOn", entry.writtenOn())
                .texts("pots", named.labels(entry.pots()))
                .text("says", entry.says())
                .object("what", event(entry), event -> HappeningJson.of(named, event.what()));
    }

    /** What happened, of an entry that is no outcome, purchase or reading. */
    private static Optional<Event> event(DiaryEntry entry) {
        return entry.written().stream()
                .filter(Event.class::isInstance)
                .map(Event.class::cast)
                .findFirst();
    }
}
