// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import static java.util.stream.Collectors.joining;

import java.util.Optional;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.DiaryEntry;
import sillbook.words.PotNames;

/** The two lines in the foot on an entry: whom it is about, and when it was written; or all of it, where its line has not room for it. */
record EntryAside(State state) {

    Aside of(DiaryEntry entry, boolean isWhole) {
        String labels = new PotNames(state.journal()).labels(entry.pots());
        if (!isWhole) {
            return Aside.of(labels, entry.says());
        }
        String when = "On " + Days.full(entry.day()) + ", written down " + written(entry) + "." + corrected(entry);
        return entry.pots().isEmpty() ? Aside.of("", when, "") : Aside.of(labels, pots(entry), when);
    }

    /** {@code 'Ninepenny Hat' x6, in the trench.}, of several {@code 18 pots of 'Inkwell', 'Marrow Lane'.} */
    private String pots(DiaryEntry entry) {
        PotNames names = new PotNames(state.journal());
        if (entry.pots().size() > 1) {
            String varieties = entry.pots().stream().map(names::name).distinct().collect(joining(", "));
            return Counts.of(entry.pots().size(), "pot") + " of " + varieties + ".";
        }
        return names.nameAndCount(entry.pots()) + stands(entry.pots().get(0), names) + ".";
    }

    private String stands(Id<Pot> pot, PotNames names) {
        return state.almanac()
                .pot(pot)
                .life()
                .stands()
                .map(stay -> ", in the " + names.place(stay.place()))
                .orElse("");
    }

    private static String written(DiaryEntry entry) {
        return entry.writtenOn().map(Days::full).orElse("the same day");
    }

    /** A purchase or an outcome has only its day. */
    private String corrected(DiaryEntry entry) {
        return Optional.of(entry.written().get(0))
                .filter(Event.class::isInstance)
                .map(Event.class::cast)
                .flatMap(Event::revisedAt)
                .map(when -> " Corrected "
                        + Days.full(
                                when.atZone(state.journal().settings().zone()).toLocalDate())
                        + ".")
                .orElse("");
    }
}
