// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.Purchase;
import sillbook.model.Variety;
import sillbook.season.WaitingBulbs;
import sillbook.words.Heard;

/** {@code Marrow Lane bulbs}: those of a variety that wait to be potted. */
final class DryBulbsSense implements Sense<List<Purchase>> {
    static final DryBulbsSense SENSE = new DryBulbsSense();

    private static final String BULBS = "bulbs";

    private DryBulbsSense() {}

    @Override
    public Optional<Found<List<Purchase>>> at(Written line, int from, Bench bench) {
        for (int end = line.phraseEnd(from); end > from + 1; end--) {
            if (line.folded(end - 1, end).equals(BULBS)) {
                return named(line.text(from, end - 1), end, bench);
            }
        }
        return Optional.empty();
    }

    private static Optional<Found<List<Purchase>>> named(String name, int end, Bench bench) {
        List<Variety> found = varieties(bench).find(name);
        Sure sure = found.size() > 1 ? Sure.OPEN : Sure.WHOLE;
        return found.stream().findFirst().map(variety -> new Found<>(end, waiting(variety, bench), sure));
    }

    private static Names<Variety> varieties(Bench bench) {
        return new Names<>(bench.journal().varieties().all(), Variety::name);
    }

    private static Heard<List<Purchase>> waiting(Variety variety, Bench bench) {
        List<Purchase> waiting = bench.outlook().dryOf(variety.id()).stream()
                .map(WaitingBulbs::purchase)
                .toList();
        return waiting.isEmpty()
                ? Heard.not(
                        "none wait",
                        "No bulbs of " + Lines.quoted(variety.name())
                                + " wait at a place to be potted. Write where they wait, as: bought 30 "
                                + variety.name() + ", fridge.")
                : Heard.as(waiting);
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        return varieties(bench).beginning(beginning).stream()
                .filter(variety -> !bench.outlook().dryOf(variety.id()).isEmpty())
                .map(variety -> Offer.of(variety.name() + " " + BULBS, "dry", Rank.OWN))
                .toList();
    }
}
