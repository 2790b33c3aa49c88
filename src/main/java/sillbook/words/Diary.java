// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Journal;
import sillbook.model.Subject;

/** Everything that was written down, as a diary: the newest day first. */
public record Diary(List<DiaryEntry> entries) {
    public Diary {
        entries = List.copyOf(entries);
    }

    public static Diary of(Journal journal) {
        DiaryReading reading = new DiaryReading(journal);
        List<DiaryEntry> entries = new ArrayList<>();
        together(journal).values().forEach(events -> entries.add(reading.of(events)));
        journal.outcomes().all().forEach(outcome -> entries.add(reading.of(outcome)));
        journal.purchases().all().forEach(purchase -> entries.add(reading.of(purchase)));
        journal.spanReadings().all().forEach(span -> entries.add(reading.of(span)));
        journal.readingSources().all().forEach(source -> entries.add(reading.of(source)));
        journal.spotReadings().all().forEach(spot -> entries.add(reading.of(spot)));
        journal.thermometers()
                .all()
                .forEach(thermometer -> reading.of(thermometer).ifPresent(entries::add));
        entries.sort((one, other) -> one.day().compareTo(other.day()));
        Collections.reverse(entries);
        return new Diary(entries);
    }

    /** Events in the order of history; those that one act wrote for several pots are together. */
    private static Map<Object, List<Event>> together(Journal journal) {
        Map<Object, List<Event>> acts = new LinkedHashMap<>();
        journal.events().all().stream()
                .sorted(Event.BY_HISTORY)
                .forEach(event -> acts.computeIfAbsent(act(event), none -> new ArrayList<>())
                        .add(event));
        return acts;
    }

    private static Object act(Event event) {
        return event.subject() instanceof Subject.OfPot
                ? new Act(event.day(), event.writtenAt().toEpochMilli(), event.what())
                : event.id();
    }

    private record Act(Day day, long writtenAt, Happening what) {}

    /**
     * The entries that a search finds: all of its words, in any order, without regard to accents and capitals. A label is
     * meant whole. {@code -word} leaves out what has that word; {@code since} and a day, what is earlier.
     *
     * @param today the day it is asked on
     */
    public List<DiaryEntry> find(String sought, LocalDate today) {
        DiarySearch search = DiarySearch.parse(sought, today);
        return entries.stream().filter(search::finds).toList();
    }
}
