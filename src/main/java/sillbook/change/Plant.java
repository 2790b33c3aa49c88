// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Season;
import sillbook.model.Stock;
import sillbook.model.Subject;

/**
 * Pots that were waiting for it are potted and watered, and perhaps put in a place at once. One whose bulbs were in no purchase yet takes
 * them from what is in hand by now.
 */
public record Plant(List<Id<Pot>> pots, Optional<Id<Place>> place, Day day) implements Change {
    public Plant {
        pots = List.copyOf(pots);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.concat(pots.stream(), place.stream());
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(
                        Rules.firstOf(Rules.somePots(pots), Rules.hasHappened(day, hand), waiting(journal)),
                        Ending.refuseAfter(journal, pots, day))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, hand));
    }

    private Optional<Refusal> waiting(Journal journal) {
        return pots.stream()
                .filter(pot -> Rules.pottingDay(journal, pot).isPresent())
                .findFirst()
                .flatMap(pot -> Rules.refuse(journal.pots().get(pot).label()
                        + " is potted already. To write another day, correct its entry."));
    }

    private Step step(Journal journal, Hand hand) {
        List<Edit> edits = new ArrayList<>(filled(journal));
        pots.forEach(pot -> edits.addAll(beginning(journal, pot, place, day, hand)));
        String where = place.map(id -> ", " + Said.place(journal, id)).orElse("");
        return new Step(Said.labels(journal, pots) + " potted" + where, edits);
    }

    private List<Edit> filled(Journal journal) {
        List<Edit> edits = new ArrayList<>();
        for (Id<Pot> id : pots) {
            Pot pot = journal.pots().get(id);
            Pot filled = pot.filledWith(pot.plantings().stream()
                    .map(planting -> planting.purchase().isPresent()
                            ? planting
                            : fromHand(planting, pot.season(), journal.with(edits)))
                    .toList());
            if (!filled.equals(pot)) {
                edits.add(new Edit.Put(filled));
            }
        }
        return edits;
    }

    private static Planting fromHand(Planting planting, Season season, Journal journal) {
        return Stock.of(planting.variety(), season, journal)
                .source(planting.count())
                .map(purchase -> new Planting(planting.variety(), planting.count(), Optional.of(purchase.id())))
                .orElse(planting);
    }

    /** The events a potted pot begins with. */
    static List<Edit> beginning(Journal journal, Id<Pot> pot, Optional<Id<Place>> place, Day day, Hand hand) {
        Subject subject = new Subject.OfPot(pot);
        List<Edit> events = new ArrayList<>();
        events.add(new Edit.Put(hand.event(subject, day, 0, new Happening.Potted())));
        place.map(journal.places()::get)
                .map(there -> new Happening.Moved(there.id(), there.serves()))
                .ifPresent(arrival -> events.add(new Edit.Put(hand.event(subject, day, 1, arrival))));
        return events;
    }
}
