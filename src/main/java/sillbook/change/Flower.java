// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
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
        return Rules.firstOf(Rules.growing(journal, pots, day, hand), Rules.planted(journal, pots, variety))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, hand));
    }

    private Step step(Journal journal, Hand hand) {
        String which = variety.map(one -> " of " + Said.variety(journal, one)).orElse("");
        String name = Said.labels(journal, pots) + " " + Said.words(point) + which;
        return new Step(name, EachPot.happens(journal, hand, pots, day, new Happening.Flowered(point, variety)));
    }
}
