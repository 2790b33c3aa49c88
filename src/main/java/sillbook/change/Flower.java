// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.model.Variety;

/**
 * Pots come to a point of their bloom.
 *
 * @param variety which of a mixed pot's varieties; empty for the whole pot
 */
public record Flower(List<Id<Pot>> pots, BloomPoint point, Optional<Id<Variety>> variety, Day day) implements Change {
    public Flower {
        pots = List.copyOf(pots);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.concat(pots.stream(), variety.stream());
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(
                        Rules.growing(journal, pots, day, hand),
                        Rules.planted(journal, pots, variety),
                        neverInFlower(journal))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, hand));
    }

    /** What still stands in the cold and has not flowered is not past bloom: another label was meant. */
    private Optional<Refusal> neverInFlower(Journal journal) {
        return pots.stream()
                .filter(pot -> point == BloomPoint.PAST_BLOOM && isInCold(journal, pot) && !hasFlowered(journal, pot))
                .findFirst()
                .flatMap(
                        pot -> Rules.refuse(
                                journal.pots().get(pot).label()
                                        + " stands in the cold, and no flower of it is written. Name another pot, or write first that it flowered."));
    }

    private boolean isInCold(Journal journal, Id<Pot> pot) {
        return happened(journal, pot, Happening.Moved.class)
                .reduce((one, later) -> later)
                .filter(moved -> moved.stage() == Stage.COLD)
                .isPresent();
    }

    private boolean hasFlowered(Journal journal, Id<Pot> pot) {
        return happened(journal, pot, Happening.Flowered.class).findAny().isPresent();
    }

    private <T extends Happening> Stream<T> happened(Journal journal, Id<Pot> pot, Class<T> sort) {
        return journal.history(pot).stream()
                .filter(event -> !event.day().earliest().isAfter(day.latest()))
                .map(Event::what)
                .filter(sort::isInstance)
                .map(sort::cast);
    }

    private Step step(Journal journal, Hand hand) {
        String which = variety.map(one -> " of " + Said.variety(journal, one)).orElse("");
        String name = Said.labels(journal, pots) + " " + Said.words(point) + which;
        return new Step(name, EachPot.happens(journal, hand, pots, day, new Happening.Flowered(point, variety)));
    }
}
