// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.stream.Collectors;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.model.Variety;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PlaceTerms;
import sillbook.words.StageWords;

/** Facts that several forms read back alike. */
final class Lines {
    private Lines() {}

    /** The pots meant; asks for them when there are none. */
    static void pots(List<Pot> pots, Draft draft) {
        if (pots.isEmpty()) {
            draft.ask("which pots?", "Which pots? Name them by their labels, as T4 or T1-T6.");
            return;
        }
        String labels = labels(pots);
        draft.means(
                pots.size() == 1
                        ? labels + " " + contents(pots.get(0), draft.bench().journal())
                        : labels + ", " + Counts.of(pots.size(), "pot"));
    }

    /** What is said of pots; nothing where the pots themselves are not understood. */
    static void of(List<Pot> pots, String says, Draft draft) {
        if (!pots.isEmpty()) {
            draft.means(labels(pots) + " " + says);
        }
    }

    /** Asks for another variety where one of the pots does not hold this one. */
    static void holding(Variety variety, List<Pot> pots, Draft draft) {
        pots.stream().filter(pot -> !pot.holds(variety.id())).findFirst().ifPresent(pot -> {
            String holds = contents(pot, draft.bench().journal());
            draft.ask(
                    "not in that pot",
                    quoted(variety.name()) + " is not in " + pot.label() + ": it holds " + holds + ".");
        });
    }

    static String labels(List<Pot> pots) {
        return Labels.say(pots.stream().map(Pot::label).toList());
    }

    static List<Id<Pot>> ids(List<Pot> pots) {
        return pots.stream().map(Pot::id).toList();
    }

    /** {@code 'Marrow Lane' x5}; of a mixed pot all it holds. */
    static String contents(Pot pot, Journal journal) {
        return pot.plantings().stream()
                .map(planting ->
                        quoted(journal.varieties().get(planting.variety()).name()) + " x" + planting.count())
                .collect(Collectors.joining(", "));
    }

    /** A variety's name as it is shown. */
    static String quoted(String name) {
        return "'" + name + "'";
    }

    /** The day something happened: {@code potted Wed 14 Oct 2026, 90 days ago}; nothing where that day is wrong. */
    static void happened(String what, Filled filled, Draft draft) {
        if (!filled.has(Slots.DAY) || filled.get(Slots.DAY).isPresent()) {
            happened(what, Slots.day(filled, draft.bench()), draft);
        }
    }

    static void happened(String what, Day day, Draft draft) {
        String away =
                day.isExact() ? ", " + Days.away(day.likely(), draft.bench().today()) : "";
        draft.means(what + " " + Days.full(day) + away);
    }

    /** What a line writes down: {@code a new place: stair window}, {@code place stair window, corrected}. */
    static void written(String noun, String name, boolean isNew, Draft draft) {
        draft.means(isNew ? "a new " + noun + ": " + name : noun + " " + name + ", corrected");
    }

    static void noted(String note, Draft draft) {
        if (!note.isEmpty()) {
            draft.means("note: " + note);
        }
    }

    /** Where pots come to stand, and whether there is room. */
    static void into(Named<Place> place, Stage stage, List<Pot> pots, String ifTaken, Draft draft) {
        int coming = draft.bench().room(place.thing()).coming(ids(pots));
        String where = place.thing().name() + made(place) + ifTaken;
        in(place.thing(), StageWords.into(stage) + ", " + where, coming, draft);
    }

    /** What is said of a place that is made with the line: {@code , a new place (cellar)}. */
    static String made(Named<Place> place) {
        return place.isNew()
                ? ", a new place (" + PlaceTerms.SORTS.say(place.thing().sort()) + ")"
                : "";
    }

    /** A fact that brings so many more pots to a place, and whether there is room. */
    static void in(Place place, String says, int coming, Draft draft) {
        Room room = draft.bench().room(place);
        draft.means(says, room.tooMany(coming));
        if (room.left() < coming) {
            String left = room.left() == 0 ? "has no room left" : "has room for " + room.left() + " more";
            draft.remark("over-room", "The " + place.name() + " " + left + ".");
        }
    }

    /** What is added to a fact whose words may be meant otherwise. */
    static String ifTaken(Slot<?> slot, Filled filled) {
        return filled.isTentative(slot) ? ", if Tab takes it" : "";
    }
}
