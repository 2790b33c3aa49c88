// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Stock;
import sillbook.model.Variety;
import sillbook.words.Counts;

/** Bulbs of a variety that pots want, and how many are in hand for them. */
record BulbsWanted(Variety variety, int bulbs, int inHand) {

    /** What pots that wait for their potting day want: bulbs are in hand for them that are in no potted pot. */
    static List<BulbsWanted> by(List<Pot> waiting, Journal journal) {
        Map<Id<Variety>, Integer> bulbs = new LinkedHashMap<>();
        waiting.stream()
                .flatMap(pot -> pot.plantings().stream())
                .forEach(planting -> bulbs.merge(planting.variety(), planting.count(), Integer::sum));
        return bulbs.entrySet().stream()
                .map(one -> new BulbsWanted(
                        journal.varieties().get(one.getKey()),
                        one.getValue(),
                        Stock.of(one.getKey(), waiting.get(0).season(), journal).unpotted()))
                .toList();
    }

    /** Says where more are wanted than are in hand. Of a variety that the grower keeps no purchases of, the book cannot know. */
    static void say(List<BulbsWanted> all, Draft draft) {
        all.stream()
                .filter(one -> one.bulbs > one.inHand)
                .filter(one -> one.isStockKept(draft.bench().journal()))
                .forEach(one -> draft.remark("not-in-hand", one.says(all.size() > 1)));
    }

    private boolean isStockKept(Journal journal) {
        return journal.purchases().all().stream()
                .anyMatch(purchase -> purchase.variety().equals(variety.id()));
    }

    private String says(boolean isOneOfSeveral) {
        int missing = bulbs - inHand;
        String which = isOneOfSeveral ? " of " + Lines.quoted(variety.name()) : "";
        return Counts.of(bulbs, "bulb") + which + " wanted, " + inHand + " in hand: " + missing
                + (missing == 1 ? " is" : " are") + " not in the book.";
    }
}
