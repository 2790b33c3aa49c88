// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Choice;
import sillbook.model.Choice.Mark;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.Variety;

/**
 * A variety is marked for a season: chosen, set aside, or undecided again. A mark that the season has already gives way;
 * those of other seasons stay.
 */
public record Choose(Id<Variety> variety, Season season, Mark mark) implements Change {

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.of(variety);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        Optional<Choice> before = journal.choice(variety, season);
        return refusal(journal, before.isPresent())
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(name(journal), List.of(edit(journal, before, hand))));
    }

    private Optional<Refusal> refusal(Journal journal, boolean isMarked) {
        boolean asks = mark.fold(chosen -> true, setAside -> true, () -> isMarked || standsFromBefore(journal));
        return asks
                ? Optional.empty()
                : Rules.refuse(Said.variety(journal, variety) + " has no mark for " + Said.season(journal, season)
                        + " that could be taken off.");
    }

    /** Whether an earlier season's mark would show where this season has none of its own. */
    private boolean standsFromBefore(Journal journal) {
        return journal.choices().all().stream()
                .anyMatch(choice ->
                        choice.variety().equals(variety) && choice.season().isBefore(season) && choice.isDecided());
    }

    private Edit edit(Journal journal, Optional<Choice> before, Hand hand) {
        boolean isToSay = mark.fold(chosen -> true, setAside -> true, () -> standsFromBefore(journal));
        if (before.isPresent() && !isToSay) {
            return new Edit.Remove(before.get());
        }
        return new Edit.Put(before.map(choice -> choice.with(mark))
                .orElseGet(() -> new Choice(hand.ids().next(), variety, season, mark)));
    }

    private String name(Journal journal) {
        String says = mark.fold(
                chosen -> " chosen for " + Said.season(journal, season) + ", " + Said.plural(chosen.bulbs(), "bulb"),
                setAside -> " set aside for " + Said.season(journal, season)
                        + (setAside.reason().isEmpty() ? "" : ": " + setAside.reason()),
                () -> " undecided again for " + Said.season(journal, season));
        return Said.variety(journal, variety) + says;
    }
}
