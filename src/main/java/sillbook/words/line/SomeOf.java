// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sillbook.model.Id;
import sillbook.model.Pot;

/** {@code T1-T30 move 10}: not all of the pots that are named, only so many. */
final class SomeOf {
    static final Slot<Integer> HOW_MANY =
            Slot.one("how many", Senses.number("(?:move|next|the next) (\\d{1,3})(?: pots?| of them)?"));

    private SomeOf() {}

    /**
     * Of the pots named so many as are written, in the order of their turns; all where no number is written.
     *
     * @param turns those that can go, the first to go first
     */
    static List<Pot> of(
            List<Pot> named, Filled filled, Draft draft, Function<Collection<Id<Pot>>, List<Id<Pot>>> turns) {
        Optional<Integer> wanted = filled.get(HOW_MANY).filter(number -> !named.isEmpty());
        if (wanted.isEmpty()) {
            return named;
        }
        List<Id<Pot>> turn = turns.apply(Lines.ids(named));
        if (wanted.get() > turn.size() || wanted.get() == 0) {
            String left = turn.isEmpty() ? "None" : "Only " + turn.size();
            draft.ask("how many?", left + " of " + Lines.labels(named) + " can go. Write another number.");
        }
        List<Id<Pot>> going = turn.subList(0, Math.min(wanted.get(), turn.size()));
        return named.stream().filter(pot -> going.contains(pot.id())).toList();
    }
}
