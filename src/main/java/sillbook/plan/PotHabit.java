// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.Comparator;
import java.util.Optional;
import sillbook.handbook.FigureName;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.season.Figures;

/** How this grower pots a variety: as it was done last, or its kind was, else as is published for a pot of six inches. */
record PotHabit(Journal journal, Figures figures) {
    /** Where nobody says: common practice for a pot of 15 cm. */
    private static final int USUAL_BULBS = 5;

    int bulbs(Variety variety) {
        return last(variety)
                .map(pot -> pot.bulbsOf(pot.first().variety()))
                .or(() -> figures.find(variety, FigureName.PER_POT)
                        .map(figure -> (int) Math.round(figure.range().typical())))
                .orElse(USUAL_BULBS);
    }

    Optional<Id<Container>> container(Variety variety) {
        return last(variety).flatMap(Pot::container).or(this::mostInStock);
    }

    private Optional<Id<Container>> mostInStock() {
        return journal.containers().all().stream()
                .filter(container -> container.stock() > 0 && container.shape() != Container.Shape.OUTER)
                .max(Comparator.comparingInt(Container::stock))
                .map(Container::id);
    }

    /** The last pot of the variety, else of its kind. */
    private Optional<Pot> last(Variety variety) {
        return journal.pots().all().stream()
                .filter(pot -> !pot.isMixed() && kind(pot).equals(variety.kind()))
                .max(Comparator.comparing((Pot pot) -> pot.holds(variety.id()))
                        .thenComparing(Pot::season)
                        .thenComparing(Pot::label));
    }

    private Kind kind(Pot pot) {
        return journal.varieties().get(pot.first().variety()).kind();
    }
}
