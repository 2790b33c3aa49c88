// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.CorrectEvent;
import sillbook.change.Together;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Place;
import sillbook.model.Subject;
import sillbook.words.Days;
import sillbook.words.Entries;

/** {@code correct T4 potted 12 oct}: the day of an entry, the place of a move, what a check saw, the words of a note. */
final class CorrectForm implements Form {
    private static final Slot<String> TEXT = Slot.one("", Senses.restAfter("says", "note"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "correct",
                "Pots or a place, the sort of entry (potted, moved, checked, first flower, noted and so on), and the right day. Of "
                        + "several such entries the last is meant; another is named by its day, before the right one. Also the "
                        + "place of a move, what a check saw, says and the words of a note.",
                "correct T4 potted 12 oct",
                "correct T4 checked 2 jan, no roots",
                "correct T4 moved 4 jan 5 jan");
    }

    @Override
    public List<String> keywords() {
        return List.of("correct");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, EntryNamed.SORT, EntryNamed.DAYS, Slots.PLACE, Sights.SIGHT, TEXT);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.POTS) || filled.has(Slots.PLACE) ? 0 : 1) + (filled.has(EntryNamed.SORT) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Day> days = filled.all(EntryNamed.DAYS);
        boolean another = hasContent(filled) || days.size() > 1;
        Optional<Day> named = another ? days.stream().findFirst() : Optional.empty();
        Optional<Day> right = !hasContent(filled) || days.size() > 1
                ? days.stream().skip(another ? 1 : 0).findFirst()
                : Optional.empty();
        List<Event> events = new EntryNamed(filled, named).find(draft);
        if (right.isEmpty() && !hasContent(filled)) {
            draft.ask("what instead?", "What should it be instead? Write the right day, as: correct T4 potted 12 oct.");
        }
        List<Change> changes = new ArrayList<>();
        for (Event event : events) {
            Stream.concat(Stream.of(event), arrival(event, draft.bench()).stream())
                    .map(each -> corrected(
                            each,
                            right.orElse(each.day()),
                            filled,
                            draft.bench().journal()))
                    .forEach(each -> changes.add(new CorrectEvent(each)));
            say(
                    event,
                    corrected(
                            event,
                            right.orElse(event.day()),
                            filled,
                            draft.bench().journal()),
                    draft);
        }
        if (!changes.isEmpty()) {
            draft.change(changes.size() == 1 ? changes.get(0) : new Together(name(events, draft.bench()), changes));
        }
    }

    /** Of one pot the step is called as its last change is. */
    private static String name(List<Event> events, Bench bench) {
        List<String> labels = events.stream()
                .flatMap(event -> event.subject().asPot().stream())
                .map(pot -> bench.journal().pots().get(pot).label())
                .toList();
        return labels.size() > 1 ? "entries of " + Labels.say(labels) + " corrected" : "";
    }

    private static boolean hasContent(Filled filled) {
        boolean place = filled.has(Slots.PLACE) && filled.has(Slots.POTS);
        return place || filled.has(Sights.SIGHT) || filled.has(TEXT);
    }

    /** A pot that was put somewhere on the day of its potting got there on the day it was really potted. */
    private static Optional<Event> arrival(Event event, Bench bench) {
        return event.what() instanceof Happening.Potted
                ? bench.journal().history(event.subject()).stream()
                        .filter(EntrySort.MOVED::is)
                        .filter(moved -> moved.day().equals(event.day()))
                        .findFirst()
                : Optional.empty();
    }

    private static Event corrected(Event event, Day day, Filled filled, Journal journal) {
        return new Event(
                event.id(),
                event.subject(),
                day,
                event.order(),
                event.writtenAt(),
                event.revisedAt(),
                inItsWay(what(event.what(), filled), event.subject(), journal));
    }

    /** A check says of a glass how the water stands, whatever words the line has for it. */
    private static Happening inItsWay(Happening what, Subject subject, Journal journal) {
        return subject.asPot()
                .filter(pot -> what instanceof Happening.Checked)
                .<Happening>map(pot -> new Happening.Checked(((Happening.Checked) what)
                        .findings()
                        .in(journal.pots().get(pot).way())))
                .orElse(what);
    }

    private static Happening what(Happening before, Filled filled) {
        if (before instanceof Happening.Moved && filled.get(Slots.PLACE).isPresent()) {
            Place place = filled.get(Slots.PLACE).get();
            return new Happening.Moved(place.id(), place.serves());
        }
        if (before instanceof Happening.Checked checked && filled.has(Sights.SIGHT)) {
            List<UnaryOperator<Findings>> seen = filled.all(Sights.SIGHT);
            boolean saysMoisture =
                    Sights.together(Findings.NOTHING, seen).moisture().isPresent();
            Findings known = saysMoisture ? checked.findings().withoutWater() : checked.findings();
            return new Happening.Checked(Sights.together(known, seen));
        }
        if (before instanceof Happening.Jotted jotted) {
            return new Happening.Jotted(filled.get(TEXT).orElse(jotted.text()));
        }
        return before;
    }

    private static void say(Event before, Event after, Draft draft) {
        Entries entries = new Entries(draft.bench().journal());
        String whose = before.subject() instanceof Subject.OfPot of
                ? draft.bench().journal().pots().get(of.pot()).label() + " "
                : "";
        draft.means(whose + entries.say(before.what()) + ", " + Days.full(before.day()));
        if (!after.equals(before)) {
            draft.means("should be: " + entries.say(after.what()) + ", " + Days.full(after.day()));
        }
    }
}
