// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;

/** Whose turn it is where only some of several pots go on: the first of these lists goes first. */
final class Turns {
    private static final Comparator<PotNow> BY_LABEL = Comparator.comparing(PotNow::life, ByLabel.OF_LIVES);

    private Turns() {}

    /** To a place and a stage: those nearest before it and most ready first, then by label; none that stands there already. */
    static List<Id<Pot>> into(Stage stage, Id<Place> place, Stream<PotNow> pots) {
        return ids(pots.filter(pot -> pot.life().isGrowing())
                .filter(pot -> pot.life()
                        .stands()
                        .filter(stay -> stay.place().equals(place))
                        .isEmpty())
                .sorted(Comparator.comparing((PotNow pot) -> !pot.life().stage().isBefore(stage))
                        .thenComparing(Comparator.comparing(Turns::stage).reversed())
                        .thenComparing(Turns::verdict)
                        .thenComparing(BY_LABEL)));
    }

    /** Out of the book: those furthest on first, then by label; none whose winter is over. */
    static List<Id<Pot>> away(Stream<PotNow> pots) {
        return ids(pots.filter(pot -> pot.life().stage() != Stage.DONE)
                .sorted(Comparator.comparing(Turns::stage).reversed().thenComparing(BY_LABEL)));
    }

    private static Stage stage(PotNow pot) {
        return pot.life().stage();
    }

    /** One that is not judged, as outside the cold, comes before those that may not come in. */
    private static Verdict verdict(PotNow pot) {
        return Optional.of(pot)
                .flatMap(PotNow::readiness)
                .map(Readiness::verdict)
                .orElse(Verdict.MAY_COME_IN);
    }

    private static List<Id<Pot>> ids(Stream<PotNow> pots) {
        return pots.map(pot -> pot.life().pot().id()).toList();
    }
}
