// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Choice;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Season;

/**
 * All that is chosen for a season becomes purchases to order. What stands to order already, is on its way or has come is not
 * ordered a second time: only the bulbs that are still missing are.
 */
public record OrderChosen(Season season) implements Change {

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.empty();
    }

    /** What is chosen for a season, in the order in which it was marked first. */
    public static List<Choice> chosen(Journal journal, Season season) {
        return journal.choices().all().stream()
                .filter(choice -> choice.season().equals(season))
                .filter(choice -> choice.bulbs().isPresent())
                .toList();
    }

    private List<Choice> missing(Journal journal) {
        return chosen(journal, season).stream()
                .filter(choice -> choice.toOrder(journal) > 0)
                .toList();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return refusal(journal).<Decision>map(refusal -> refusal).orElseGet(() -> step(journal, hand));
    }

    private Optional<Refusal> refusal(Journal journal) {
        if (chosen(journal, season).isEmpty()) {
            return Rules.refuse("Nothing is chosen for " + Said.season(journal, season)
                    + ". Choose first, as: choose Lantern Row x10.");
        }
        return missing(journal).isEmpty()
                ? Rules.refuse("All that is chosen for " + Said.season(journal, season)
                        + " is to order, ordered or in hand already. Choose more, or leave it.")
                : Optional.empty();
    }

    private Step step(Journal journal, Hand hand) {
        List<Edit> edits = new ArrayList<>();
        int bulbs = 0;
        for (Choice choice : missing(journal)) {
            int some = choice.toOrder(journal);
            bulbs += some;
            edits.add(new Edit.Put(Purchase.of(
                    hand.ids().next(), choice.variety(), season, Day.on(hand.today()), some, State.TO_ORDER)));
        }
        return new Step(name(journal, bulbs), edits);
    }

    private String name(Journal journal, int bulbs) {
        List<Choice> missing = missing(journal);
        String what = missing.size() == 1
                ? bulbs + " " + Said.variety(journal, missing.get(0).variety())
                : Said.plural(bulbs, "bulb") + " of " + missing.size() + " chosen varieties";
        return what + " to order for " + Said.season(journal, season);
    }
}
