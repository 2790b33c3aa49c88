// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Arrival;
import sillbook.model.Day;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Cooled;
import sillbook.model.Purchase.Grade;
import sillbook.model.Purchase.Money;
import sillbook.model.Purchase.State;
import sillbook.model.Variety;
import sillbook.text.Fold;

/**
 * Purchases, a row each. A row means a purchase of the book where variety, day and supplier are the same, and the grade
 * where both say one; of that an empty cell changes nothing.
 */
final class PurchaseList implements ListForm<Purchase> {

    @Override
    public List<Column<Purchase, ?>> columns() {
        return PurchaseColumns.ALL;
    }

    @Override
    public String name(Purchase purchase, Journal journal) {
        return "'" + journal.varieties().get(purchase.variety()).name() + "'";
    }

    @Override
    public Optional<Meant<Purchase>> read(Cells cells) {
        return PurchaseColumns.NAMED.read(cells).flatMap(named -> read(named.variety(), named.isNew(), cells));
    }

    private static Optional<Meant<Purchase>> read(Variety variety, boolean isNew, Cells cells) {
        Optional<Purchase> before = known(variety, cells);
        Purchase plain = before.orElseGet(() -> plain(variety, cells));
        return new Counted(cells).over(plain.arrival()).map(arrival -> {
            Purchase after = over(plain, arrival, cells);
            return new Meant<>(before, after, isNew ? Optional.of(variety) : Optional.empty());
        });
    }

    /** Of several the one that says the same of the count, else the first. */
    private static Optional<Purchase> known(Variety variety, Cells cells) {
        int count = cells.need(PurchaseColumns.COUNT);
        return cells.bench().journal().purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety.id()))
                .filter(purchase -> purchase.day().equals(cells.need(PurchaseColumns.DATE)))
                .filter(purchase -> isAlike(purchase.supplier(), cells.text(PurchaseColumns.SUPPLIER)))
                .filter(purchase -> isOpen(purchase.grade().printed(), cells.text(PurchaseColumns.GRADE)))
                .min(Comparator.comparing(purchase -> purchase.count() != count));
    }

    private static boolean isAlike(String one, String other) {
        return Fold.of(one).equals(Fold.of(other));
    }

    private static boolean isOpen(String one, String other) {
        return one.isEmpty() || other.isEmpty() || isAlike(one, other);
    }

    private static Purchase plain(Variety variety, Cells cells) {
        Day day = cells.need(PurchaseColumns.DATE);
        return Purchase.of(
                cells.bench().ids().next(),
                variety.id(),
                cells.bench().journal().seasonOf(day.likely()),
                day,
                cells.need(PurchaseColumns.COUNT),
                State.IN_HAND);
    }

    private static Purchase over(Purchase before, Arrival arrival, Cells cells) {
        Optional<Length> across = cells.get(PurchaseColumns.ACROSS).or(before.grade()::across);
        Optional<Money> price = cells.get(PurchaseColumns.PRICE).or(before::price);
        Optional<Cooled> cooled = cells.get(PurchaseColumns.COOLED).map(weeks -> new Cooled(Optional.of(weeks)));
        return new Purchase(
                before.id(),
                before.variety(),
                before.season(),
                before.day(),
                cells.need(PurchaseColumns.COUNT),
                new Grade(cells.get(PurchaseColumns.GRADE).orElse(before.grade().printed()), across),
                price,
                cells.get(PurchaseColumns.SUPPLIER).orElse(before.supplier()),
                cells.get(PurchaseColumns.ORIGIN).orElse(before.origin()),
                arrival,
                cells.get(PurchaseColumns.WAITS).map(Place::id).or(before::waits),
                cooled.orElse(before.cooled()),
                cells.get(PurchaseColumns.STATE).orElse(before.state()),
                cells.get(PurchaseColumns.NOTE).orElse(before.note()));
    }
}
