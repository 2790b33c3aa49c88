// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Labels;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Stock;
import sillbook.model.Variety;
import sillbook.words.Counts;

/**
 * Pots about to be made, as far as they are described.
 *
 * @param label the first label, or its letters; empty for the next free ones of the kind
 * @param potted empty while they wait
 */
record NewPots(int howMany, List<Planting> plantings, String label, Optional<Day> potted, Bench bench) {
    /** A variety, and how many bulbs of it are in each pot, when that is said. */
    record Planting(Named<Variety> variety, Optional<Integer> bulbs) {
        private String name() {
            return Lines.quoted(variety.thing().name());
        }

        private boolean isComplete() {
            return bulbs.filter(count -> count > 0).isPresent();
        }

        private String says(boolean onePot) {
            return name()
                    + bulbs.map(count -> onePot ? " x" + count : ", " + count + " in each")
                            .orElse("");
        }

        private Stock stock(NewPots pots) {
            return Stock.of(variety.thing().id(), pots.season(), pots.bench.journal());
        }

        private int wanted(NewPots pots) {
            return bulbs.orElse(0) * pots.howMany;
        }

        private BulbsWanted wants(NewPots pots) {
            return new BulbsWanted(variety.thing(), wanted(pots), stock(pots).inHand());
        }
    }

    boolean isComplete() {
        return !plantings.isEmpty() && plantings.stream().allMatch(Planting::isComplete);
    }

    Season season() {
        return potted.map(day -> bench.journal().seasonOf(day.likely())).orElseGet(bench::season);
    }

    /** The first label, or the letters of the next free ones. */
    String firstLabel() {
        Optional<String> ofKind = plantings.stream()
                .findFirst()
                .map(first -> bench.kinds().letter(first.variety().thing().kind()));
        return label.isEmpty() ? ofKind.orElse("") : PotLabels.tidy(label);
    }

    private List<String> labels() {
        String first = firstLabel();
        List<String> inUse = Stream.concat(
                        bench.journal().potsOf(season()).stream(), bench.outlook().livingOn().pots().stream())
                .map(Pot::label)
                .toList();
        return Labels.number(first) > 0 ? Labels.from(first, howMany) : Labels.nextFree(first, howMany, inUse);
    }

    List<Variety> newVarieties() {
        return plantings.stream()
                .map(Planting::variety)
                .filter(Named::isNew)
                .map(Named::thing)
                .toList();
    }

    /** Only of complete ones; each from the purchase that its bulbs are taken from. */
    List<Pot.Planting> made() {
        return plantings.stream()
                .map(planting -> new Pot.Planting(
                        planting.variety().thing().id(),
                        planting.bulbs().orElseThrow(),
                        planting.stock(this).source(planting.wanted(this)).map(Purchase::id)))
                .toList();
    }

    /** Says what they are, and asks for what is missing. */
    void say(Draft draft) {
        if (plantings.isEmpty()) {
            draft.means(Counts.of(howMany, "pot"));
            draft.ask("which variety?", "Which variety? Write its name, and the bulbs in each pot as x5.");
            return;
        }
        draft.means(pots() + ", "
                + plantings.stream()
                        .map(planting -> planting.says(howMany == 1))
                        .collect(Collectors.joining(", ")));
        newVarieties().forEach(made -> draft.means("a new variety: " + Lines.quoted(made.name()) + ", " + made.kind()));
        plantings.stream()
                .filter(planting -> !planting.isComplete())
                .findFirst()
                .ifPresent(open -> draft.ask(
                        "how many bulbs?",
                        "How many bulbs in each pot? Write them after the name, as "
                                + open.variety().thing().name() + " x5."));
    }

    private String pots() {
        List<String> labels = labels();
        return switch (labels.size()) {
            case 0 -> "no pot";
            case 1 -> labels.get(0);
            default -> Counts.of(howMany, "pot") + " " + labels.get(0) + " to " + labels.get(howMany - 1);
        };
    }

    /** Says where fewer bulbs are in hand than are wanted; of complete pots only. */
    void sayStock(Draft draft) {
        BulbsWanted.say(plantings.stream().map(planting -> planting.wants(this)).toList(), draft);
    }
}
