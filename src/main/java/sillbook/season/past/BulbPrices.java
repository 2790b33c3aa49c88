// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Variety;

/** What a bulb of each variety cost when it was last bought at a price. */
record BulbPrices(Map<Id<Variety>, Money> each) {
    /** Of fewer prices no third is the lowest. */
    private static final int FEWEST = 3;

    BulbPrices {
        each = Map.copyOf(each);
    }

    static BulbPrices of(Journal journal) {
        Map<Id<Variety>, Money> each = new HashMap<>();
        journal.purchases().all().stream()
                .sorted(Comparator.comparing(Purchase::day))
                .forEach(purchase -> purchase.costOf(1).ifPresent(price -> each.put(purchase.variety(), price)));
        return new BulbPrices(each);
    }

    Optional<Money> last(Id<Variety> variety) {
        return Optional.ofNullable(each.get(variety));
    }

    /** Whether no more than a third of the varieties that have a price in the same currency cost less or as much. */
    boolean isCheap(Money price) {
        List<Long> prices = each.values().stream()
                .filter(other -> other.currency().equals(price.currency()))
                .map(Money::minor)
                .toList();
        long upTo = prices.stream().filter(other -> other <= price.minor()).count();
        return prices.size() >= FEWEST && upTo * 3 <= prices.size();
    }
}
