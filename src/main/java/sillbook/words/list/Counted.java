// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.Optional;
import sillbook.model.Arrival;
import sillbook.model.Variety;

/** The numbers of bulbs in a row of purchases: they have to go together. */
record Counted(Cells cells) {

    /** The arrival with what is written put over what it was; empty, and the cell blamed, where the numbers clash. */
    Optional<Arrival> over(Arrival was) {
        int count = cells.need(PurchaseColumns.COUNT);
        Arrival arrival = new Arrival(
                ordered(count).or(was::ordered).filter(bulbs -> bulbs != count),
                cells.get(PurchaseColumns.INSTEAD_OF).map(Variety::id).or(was::insteadOf),
                cells.get(PurchaseColumns.FIRM).or(was::firm),
                cells.get(PurchaseColumns.SOFT).or(was::soft),
                cells.get(PurchaseColumns.MOULD).or(was::mouldy),
                cells.get(PurchaseColumns.ARRIVAL).orElse(was.note()));
        return goTogether(count, arrival) ? Optional.of(arrival) : Optional.empty();
    }

    private Optional<Integer> ordered(int count) {
        return cells.get(PurchaseColumns.ORDERED)
                .or(() -> cells.get(PurchaseColumns.SHORT).map(less -> count + less));
    }

    private boolean goTogether(int count, Arrival arrival) {
        int looked = arrival.firm().orElse(0) + arrival.unsound();
        if (looked > count) {
            cells.blame(
                    PurchaseColumns.COUNT,
                    "firm, soft and mould are " + looked + " together, and " + count
                            + " came. Count each bulb once, under the worst of it.");
        }
        Optional<Integer> ordered = cells.get(PurchaseColumns.ORDERED);
        Optional<Integer> less = cells.get(PurchaseColumns.SHORT);
        boolean isOff = ordered.isPresent() && less.isPresent() && ordered.get() - count != less.get();
        if (isOff) {
            cells.blame(
                    PurchaseColumns.SHORT,
                    count + " of " + ordered.get() + " came, which is not " + less.get()
                            + " short. Mend one of the three numbers.");
        }
        return looked <= count && !isOff;
    }
}
