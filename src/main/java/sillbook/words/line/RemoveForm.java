// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.Remove;
import sillbook.change.RemovePots;
import sillbook.change.Together;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.words.Complaint;
import sillbook.words.plan.PlanRemoved;

/** {@code remove T4}: pots with all their entries, or anything else that nothing refers to. */
final class RemoveForm implements Form {
    private static final Slot<Removable> WHAT = Slot.one("sort of thing", Senses.oneOf(Removable.WORDS));
    private static final Slot<Boolean> ENTRY = Slot.one("", Senses.flag("entry"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "remove",
                "Pots by their labels, with all their entries; or a variety, place, potting mix, container, usual way or kind "
                        + "that nothing refers to; or the wish, plan, outcome, last purchase, last reading, thermometer, last file of a thermometer, file format, ground or entry of "
                        + "what is named.",
                "remove T4",
                "remove place trench",
                "remove entry T4 checked 2 jan",
                "remove wish for easter",
                "remove plan A");
    }

    @Override
    public List<String> keywords() {
        return List.of("remove");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(
                WHAT,
                ENTRY,
                Slots.POTS,
                Slots.VARIETY,
                Slots.PLACE,
                Slots.MIX,
                Slots.CONTAINER,
                Removable.NAMED_WAY,
                Removable.OWN_KIND,
                EntryNamed.SORT,
                EntryNamed.DAYS,
                WishForm.DAYS,
                PlanNamed.LETTER,
                Marking.SEASON,
                Slots.KIND);
    }

    @Override
    public int wanting(Filled filled) {
        return 0;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        if (filled.has(ENTRY)) {
            remove(new EntryNamed(filled, filled.all(EntryNamed.DAYS).stream().findFirst()).find(draft), draft);
        } else if (!pots.isEmpty() && !filled.has(WHAT)) {
            removePots(pots, draft);
        } else {
            noSuchPlan(filled, draft.bench()).ifPresent(draft::ask);
            remove(named(filled, draft.bench().journal()), draft);
        }
    }

    /** Why there is no plan of the letter that is written, where none of its seasons has one. */
    private static Optional<Complaint> noSuchPlan(Filled filled, Bench bench) {
        return filled.get(WHAT)
                .filter(what -> what == Removable.PLAN
                        && what.named(filled, bench.journal()).findAny().isEmpty())
                .flatMap(plan -> filled.get(PlanNamed.LETTER))
                .flatMap(letter -> PlanNamed.called(letter, Marking.planned(filled, bench), bench)
                        .complaint());
    }

    private static void removePots(List<Pot> pots, Draft draft) {
        Journal journal = draft.bench().journal();
        int entries =
                pots.stream().mapToInt(pot -> journal.history(pot.id()).size()).sum();
        Lines.pots(pots, draft);
        draft.means("would go, with " + (entries == 1 ? "1 entry" : entries + " entries"));
        draft.remark("removes", "If only something failed, write failed instead: then next year knows why.");
        draft.change(new RemovePots(Lines.ids(pots)));
    }

    /** Where the line does not say of which sort it is, everything of that name. */
    private static List<Entity<?>> named(Filled filled, Journal journal) {
        List<Entity<?>> named = new ArrayList<>();
        Optional<Removable> what = filled.get(WHAT);
        Stream<Removable> sorts = what.map(Stream::of)
                .orElseGet(() -> Stream.of(
                        Removable.VARIETY,
                        Removable.PLACE,
                        Removable.MIX,
                        Removable.CONTAINER,
                        Removable.USUAL_WAY,
                        Removable.KIND));
        sorts.forEach(sort -> sort.named(filled, journal).forEach(named::add));
        return named;
    }

    private static void remove(List<? extends Entity<?>> going, Draft draft) {
        if (going.isEmpty()) {
            draft.ask(
                    "remove what?",
                    "Nothing in the book is meant by that. Write its label or its name, as: remove T4, remove place trench.");
            return;
        }
        List<Change> changes = going.stream().<Change>map(Remove::new).toList();
        changes.forEach(change -> change.on(
                        draft.bench().journal(), draft.bench().hand())
                .fold(step -> say(step.name(), draft), refusal -> draft));
        going.forEach(gone -> PlanRemoved.left(gone, draft.bench().journal()).ifPresent(draft::means));
        draft.change(changes.size() == 1 ? changes.get(0) : new Together("", changes));
    }

    private static Draft say(String step, Draft draft) {
        draft.means(step);
        return draft;
    }
}
