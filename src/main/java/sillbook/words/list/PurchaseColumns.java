// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.Pattern;
import sillbook.model.Arrival;
import sillbook.model.Day;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Purchase.State;
import sillbook.model.Variety;
import sillbook.words.Counts;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Prices;
import sillbook.words.Terms;
import sillbook.words.Weeks;
import sillbook.words.line.Bench;

/** The columns of a list of purchases. */
final class PurchaseColumns {
    private static final Pattern COUNT_OF_BULBS = Pattern.compile("(\\d{1,5})(?: bulbs?)?");

    static final Naming<Purchase> NAMED = new Naming<>(
            Column.<Purchase, String>of(
                            "name",
                            "the variety's name, with or without quotes",
                            (cell, bench) -> Naming.name(cell),
                            (purchase, journal) -> "")
                    .orCalled("variety", "cultivar")
                    .needed(),
            Column.of(
                    "kind",
                    "the variety's kind, with its class if you like; needed unless the variety is in the book",
                    Naming::kind,
                    (purchase, journal) -> ""),
            Column.<Purchase, String>of(
                            "class",
                            "its class or division, where the kind's own cell does not say it",
                            (cell, bench) -> Heard.as(cell),
                            (purchase, journal) -> "")
                    .orCalled("division", "group"));
    static final Column<Purchase, Day> DATE = Column.<Purchase, Day>of(
                    "date",
                    "the day the bulbs came, or were ordered: 2026-09-14, 14 sep 2026",
                    (cell, bench) -> DayReader.back(bench.outlook().day()).parse(cell),
                    (purchase, journal) -> Days.full(purchase.day()))
            .orCalled("day", "bought")
            .needed();
    static final Column<Purchase, Integer> COUNT = Column.<Purchase, Integer>of(
                    "count",
                    "how many bulbs came, or are on their way: 30",
                    (cell, bench) -> number(cell, 1),
                    (purchase, journal) -> Counts.of(purchase.count(), "bulb"))
            .orCalled("bulbs", "number", "quantity")
            .needed();
    static final Column<Purchase, Integer> ORDERED = Column.of(
            "ordered",
            "how many were ordered, where another number came",
            (cell, bench) -> number(cell, 1),
            (purchase, journal) -> counted(purchase.arrival().ordered(), "ordered"));
    static final Column<Purchase, Integer> SHORT = Column.<Purchase, Integer>of(
                    "short",
                    "how many fewer came than were ordered; the same said the other way",
                    (cell, bench) -> number(cell, 0),
                    (purchase, journal) -> "")
            .orCalled("missing");
    static final Column<Purchase, Variety> INSTEAD_OF = Column.of(
            "instead of",
            "the variety of the book that was ordered, where another was sent",
            PurchaseColumns::variety,
            (purchase, journal) -> purchase.arrival()
                    .insteadOf()
                    .map(variety -> "sent instead of '"
                            + journal.varieties().get(variety).name() + "'")
                    .orElse(""));
    static final Column<Purchase, Integer> FIRM = looked("firm", Arrival::firm);
    static final Column<Purchase, Integer> SOFT = looked("soft", Arrival::soft);
    static final Column<Purchase, Integer> MOULD =
            looked("mould", Arrival::mouldy).orCalled("mold", "mouldy", "moldy");
    static final Column<Purchase, String> GRADE = written(
                    "grade",
                    "the size as the packet prints it: 12+",
                    "grade ",
                    one -> one.grade().printed())
            .orCalled("size");
    static final Column<Purchase, Length> ACROSS = Column.of(
            "across",
            "the bulb as measured across, in centimetres unless a unit is written: 4.5",
            (cell, bench) -> Lengths.parse(cell),
            (purchase, journal) -> purchase.grade()
                    .across()
                    .map(across -> Lengths.say(across, journal.settings().lengths()) + " across")
                    .orElse(""));
    static final Column<Purchase, Money> PRICE = Column.of(
            "price",
            "what they cost altogether: 9.50, 9,50, EUR 9.50",
            (cell, bench) -> Prices.parse(cell),
            (purchase, journal) -> purchase.price().map(Prices::say).orElse(""));
    static final Column<Purchase, String> SUPPLIER = written(
                    "supplier", "from whom, in your words", "from ", Purchase::supplier)
            .orCalled("from");
    static final Column<Purchase, String> ORIGIN = written(
                    "origin", "where they were grown, in your words", "grown in ", Purchase::origin)
            .orCalled("grown in");
    static final Column<Purchase, String> ARRIVAL = written(
            "arrival",
            "how they arrived, in your words",
            "arrived ",
            one -> one.arrival().note());
    static final Column<Purchase, Double> COOLED = Column.of(
            "cooled",
            "weeks of cold they had dry before; 0 where they had none",
            (cell, bench) -> Weeks.parse(cell),
            (purchase, journal) -> purchase.cooled()
                    .weeks()
                    .map(weeks -> weeks == 0 ? "not cooled before" : "cooled " + Weeks.say(weeks))
                    .orElse(""));
    static final Column<Purchase, Place> WAITS = Column.<Purchase, Place>of(
                    "waits",
                    "the place of the book where they wait to be potted",
                    PurchaseColumns::place,
                    (purchase, journal) -> purchase.waits()
                            .map(place ->
                                    "wait in the " + journal.places().get(place).name())
                            .orElse(""))
            .orCalled("place");
    static final Column<Purchase, State> STATE = Column.of(
            "state",
            "in hand, ordered or rejected; in hand where it is not said",
            (cell, bench) -> Terms.STATES.parse(cell),
            (purchase, journal) -> Terms.STATES.say(purchase.state()));
    static final Column<Purchase, String> NOTE =
            written("note", "in your words", "", Purchase::note).orCalled("notes");

    /** In the order they are told. */
    static final List<Column<Purchase, ?>> ALL = List.of(
            NAMED.name(),
            NAMED.kind(),
            NAMED.group(),
            DATE,
            COUNT,
            STATE,
            GRADE,
            ACROSS,
            PRICE,
            SUPPLIER,
            ORIGIN,
            ORDERED,
            SHORT,
            INSTEAD_OF,
            FIRM,
            SOFT,
            MOULD,
            ARRIVAL,
            COOLED,
            WAITS,
            NOTE);

    private PurchaseColumns() {}

    private static Heard<Integer> number(String cell, int least) {
        var found = COUNT_OF_BULBS.matcher(cell);
        if (!found.matches() || Integer.parseInt(found.group(1)) < least) {
            return Heard.not(
                    "a number of bulbs, as 30", "'" + cell + "' is no number of bulbs. Write it as 30, in figures.");
        }
        return Heard.as(Integer.parseInt(found.group(1)));
    }

    private static Column<Purchase, Integer> looked(String as, Function<Arrival, Optional<Integer>> fact) {
        return Column.of(
                as,
                as.equals("mould") ? "how many bore mould" : "how many were " + as,
                (cell, bench) -> number(cell, 0),
                (purchase, journal) -> counted(fact.apply(purchase.arrival()), as));
    }

    private static String counted(Optional<Integer> bulbs, String as) {
        return bulbs.map(number -> number + " " + as).orElse("");
    }

    private static Column<Purchase, String> written(
            String name, String holds, String lead, Function<Purchase, String> fact) {
        BiFunction<Purchase, Journal, String> says =
                (purchase, journal) -> fact.apply(purchase).isEmpty() ? "" : lead + fact.apply(purchase);
        return Column.of(name, holds, (cell, bench) -> Heard.as(cell), says);
    }

    private static Heard<Place> place(String cell, Bench bench) {
        return new Known<>("place", bench.journal().places().all(), Place::name).find(cell);
    }

    private static Heard<Variety> variety(String cell, Bench bench) {
        return Naming.name(cell)
                .then(name -> new Known<>("variety", bench.journal().varieties().all(), Variety::name).find(name));
    }
}
