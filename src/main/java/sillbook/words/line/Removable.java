// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.BiFunction;
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
    VARIETY((filled, journal) -> filled.get(Slots.VARIETY).stream()),
    PLACE((filled, journal) -> filled.get(Slots.PLACE).stream()),
    MIX((filled, journal) -> filled.get(Slots.MIX).stream()),
    CONTAINER((filled, journal) -> filled.get(Slots.CONTAINER).stream()),
    KIND((filled, journal) -> filled.get(Removable.ownKind()).stream()),
    PURCHASE(
            (filled, journal) -> filled.get(Slots.VARIETY).flatMap(variety -> lastPurchase(variety, journal)).stream()),
    READING((filled, journal) -> filled.get(Slots.PLACE).flatMap(place -> lastReading(place, journal)).stream()),
    WISH(Removable::wishes),
    OUTCOME(Removable::outcomes);

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

    private static final Slot<OwnKind> OWN_KIND = Slot.one(
            "kind", new NameSense<>(bench -> bench.journal().ownKinds().all(), OwnKind::name, (kind, bench) -> ""));

    private final BiFunction<Filled, Journal, Stream<? extends Entity<?>>> named;

    Removable(BiFunction<Filled, Journal, Stream<? extends Entity<?>>> named) {
        this.named = named;
    }

    /** Those of this sort that the line names. */
    Stream<? extends Entity<?>> named(Filled filled, Journal journal) {
        return named.apply(filled, journal);
    }

    static Slot<OwnKind> ownKind() {
        return OWN_KIND;
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
