// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Arrival;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Cooled;
import sillbook.model.Purchase.Grade;
import sillbook.model.Purchase.State;

/** The purchases. */
final class PurchaseRows implements Mapping<Purchase> {
    private static final Table TABLE = Table.of(
            "purchase",
            "id",
            "variety",
            "season",
            "day",
            "day_earliest",
            "day_latest",
            "bulbs",
            "grade",
            "across",
            "across_written",
            "price",
            "currency",
            "supplier",
            "origin",
            "ordered",
            "instead_of",
            "firm",
            "soft",
            "mouldy",
            "arrival",
            "waits_in",
            "cooled_weeks",
            "state",
            "note");

    @Override
    public Class<Purchase> type() {
        return Purchase.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Purchase purchase, Values row) {
        row.id(purchase.id())
                .id(purchase.variety())
                .season(purchase.season())
                .day(purchase.day())
                .number(purchase.count())
                .text(purchase.grade().printed())
                .optionalLength(purchase.grade().across())
                .optionalMoney(purchase.price())
                .text(purchase.supplier())
                .text(purchase.origin())
                .optionalNumber(purchase.arrival().ordered())
                .optionalId(purchase.arrival().insteadOf())
                .optionalNumber(purchase.arrival().firm())
                .optionalNumber(purchase.arrival().soft())
                .optionalNumber(purchase.arrival().mouldy())
                .text(purchase.arrival().note())
                .optionalId(purchase.waits())
                .optionalReal(purchase.cooled().weeks())
                .word(purchase.state())
                .text(purchase.note());
    }

    @Override
    public Purchase read(Row row) throws SQLException {
        return new Purchase(
                row.id(),
                row.id(),
                row.season(),
                row.day(),
                row.number(),
                new Grade(row.text(), row.optionalLength()),
                row.optionalMoney(),
                row.text(),
                row.text(),
                arrival(row),
                row.optionalId(),
                new Cooled(row.optionalReal()),
                row.word(State.class),
                row.text());
    }

    private static Arrival arrival(Row row) throws SQLException {
        return new Arrival(
                row.optionalNumber(),
                row.optionalId(),
                row.optionalNumber(),
                row.optionalNumber(),
                row.optionalNumber(),
                row.text());
    }
}
