// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;

/** Something is done to pots that changes no stage. */
public record CareFor(List<Id<Pot>> pots, Care care, Day day) implements Change {
    private static final Set<Care> OF_WATER = EnumSet.of(Care.TOPPED_UP, Care.WATER_CHANGED, Care.SPIRIT_IN_WATER);

    public CareFor {
        pots = List.copyOf(pots);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return pots.stream();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(Rules.inHand(journal, pots, day, hand), unfit(journal))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(
                        Said.labels(journal, pots) + " " + Said.words(care),
                        EachPot.happens(journal, hand, pots, day, new Happening.Cared(care))));
    }

    /** Only what stands over water has water to top up or to change; spirit in potting mix would harm. */
    private Optional<Refusal> unfit(Journal journal) {
        if (!OF_WATER.contains(care)) {
            return Optional.empty();
        }
        return pots.stream()
                .map(journal.pots()::get)
                .filter(pot -> !pot.way().isOverWater())
                .findFirst()
                .flatMap(pot -> Rules.refuse(pot.label() + " stands in potting mix, not over water. "
                        + (care == Care.SPIRIT_IN_WATER
                                ? "Spirit is only for the water of glasses and pebbles."
                                : "Write that it was watered.")));
    }
}
