// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.OwnKind;
import sillbook.model.Place;
import sillbook.model.Purchase;
import sillbook.model.SpanReading;
import sillbook.model.Variety;
import sillbook.words.Vocabulary;

/** What can be removed beside pots and single entries, and how a line points at it. */
enum Removable {
    VARIETY,
    PLACE,
    MIX,
    CONTAINER,
    KIND,
    PURCHASE,
    READING,
    WISH,
    OUTCOME;

    static final Vocabulary<Removable> WORDS = Vocabulary.<Removable>of("sort of thing")
            .with(VARIETY, "variety")
            .with(PLACE, "place")
            .with(MIX, "potting mix", "mix")
            .with(CONTAINER, "container")
            .with(KIND, "kind")
            .with(PURCHASE, "purchase")
            .with(READING, "reading")
            .with(WISH, "wish")
            .with(OUTCOME, "outcome");

    static final Slot<OwnKind> OWN_KIND = Slot.one(
            "kind", new NameSense<>(bench -> bench.journal().ownKinds().all(), OwnKind::name, (kind, bench) -> ""));

    /** Those of this sort that the line names. */
    Stream<? extends Entity<?>> named(Filled filled, Journal journal) {
        return switch (this) {
            case VARIETY -> filled.get(Slots.VARIETY).stream();
            case PLACE -> filled.get(Slots.PLACE).stream();
            case MIX -> filled.get(Slots.MIX).stream();
            case CONTAINER -> filled.get(Slots.CONTAINER).stream();
            case KIND -> filled.get(OWN_KIND).stream();
            case PURCHASE -> filled.get(Slots.VARIETY).flatMap(variety -> lastPurchase(variety, journal)).stream();
            case READING -> filled.get(Slots.PLACE).flatMap(place -> lastReading(place, journal)).stream();
            case WISH -> wishes(filled, journal);
            case OUTCOME -> outcomes(filled, journal);
        };
    }

    private static Optional<Purchase> lastPurchase(Variety variety, Journal journal) {
        return journal.purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety.id()))
                .max(Comparator.comparing(Purchase::day));
    }

    private static Optional<SpanReading> lastReading(Place place, Journal journal) {
        return journal.spanReadings().all().stream()
                .filter(reading -> reading.place().equals(place.id()))
                .max(Comparator.comparing(SpanReading::to));
    }

    private static Stream<? extends Entity<?>> wishes(Filled filled, Journal journal) {
        return filled.get(WishForm.DAYS).stream()
                .flatMap(days -> journal.wishes().all().stream()
                        .filter(wish -> days.span().contains(wish.from()))
                        .filter(wish -> filled.get(Slots.KIND).isEmpty()
                                || filled.get(Slots.KIND).equals(wish.kind())));
    }

    private static Stream<? extends Entity<?>> outcomes(Filled filled, Journal journal) {
        return journal.outcomes().all().stream()
                .filter(outcome -> Lines.ids(Slots.pots(filled)).contains(outcome.pot()));
    }
}
