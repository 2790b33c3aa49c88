// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.Jot;
import sillbook.model.Pot;
import sillbook.model.Subject;
import sillbook.words.Heard;

/** {@code note T4: flat sides to the rim}: a note on pots, a place, a variety, or the season. */
final class JotForm implements Form {
    private static final Slot<String> TEXT = Slot.one("", JotForm::text);

    /** All that follows a colon; where there is none, all that follows what the note is about. */
    private static Optional<Found<String>> text(Written line, int from, Bench bench) {
        Sure sure = line.isMark(from - 1, ":") ? Sure.WHOLE : Sure.NEW;
        return Optional.of(new Found<>(line.size(), Heard.as(line.rest(from)), sure));
    }

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "note",
                "What it is about (pots, a place, a variety, or nothing for the season), a day if not today, a colon, and the words.",
                "note T4: flat sides to the rim",
                "note cellar, yesterday: one mouse",
                "note: frost all week");
    }

    @Override
    public List<String> keywords() {
        return List.of("note", "jot");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(TEXT, Slots.POTS, Slots.PLACE, Slots.VARIETY, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(TEXT) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        List<Subject> subjects = new ArrayList<>();
        List<String> names = new ArrayList<>();
        if (!pots.isEmpty()) {
            names.add(Lines.labels(pots));
            pots.forEach(pot -> subjects.add(new Subject.OfPot(pot.id())));
        }
        filled.get(Slots.PLACE).ifPresent(place -> {
            names.add("the " + place.name());
            subjects.add(new Subject.OfPlace(place.id()));
        });
        filled.get(Slots.VARIETY).ifPresent(variety -> {
            names.add(Lines.quoted(variety.name()));
            subjects.add(new Subject.OfVariety(variety.id()));
        });
        if (subjects.isEmpty()) {
            names.add("the season");
            subjects.add(new Subject.OfSeason(draft.bench().season()));
        }
        draft.means("a note on " + String.join(", ", names));
        Lines.happened("of", filled, draft);
        filled.get(TEXT)
                .filter(text -> !text.isBlank())
                .ifPresentOrElse(
                        text -> {
                            draft.means("it says: " + text);
                            draft.change(new Jot(subjects, text, Slots.day(filled, draft.bench())));
                        },
                        () -> draft.ask(
                                "which words?",
                                "What should the note say? Write it after a colon, as: note T4: leaning."));
    }
}
