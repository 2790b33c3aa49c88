// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.Arrival;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Variety;
import sillbook.words.Counts;
import sillbook.words.Heard;

/** What a line says of how bulbs bought came: how many of how many, how many of them sound, and what was sent instead. */
record ArrivalFacts(Filled filled) {
    private static final Slot<Came> CAME = Slot.one(
            "number of bulbs",
            Senses.matching(
                    "(\\d{1,5}) (?:out )?of ([1-9]\\d{0,4})(?: bulbs?)?",
                    said -> Heard.as(new Came(said.number(1), said.number(2)))));
    private static final Slot<Integer> SHORT = Slot.one(
            "",
            Senses.matching(
                    "(\\d{1,5}) (?:short|missing)|short (?:by )?(\\d{1,5})",
                    said -> Heard.as(said.number(said.has(1) ? 1 : 2))));
    private static final Slot<Integer> FIRM = counted("firm|sound");
    private static final Slot<Integer> SOFT = counted("soft");
    private static final Slot<Integer> MOULDY = counted("mould|mouldy|mold|moldy");

    /** The variety that was sent where another was ordered. */
    static final Slot<Named<Variety>> SENT = Slot.one(
            "variety sent",
            new LedSense<>(List.of("sent", "substituted by", "replaced by"), Slots.ANY_VARIETY.sense()));

    /** The variety that was ordered where another was sent. */
    static final Slot<Named<Variety>> INSTEAD_OF =
            Slot.one("variety ordered", new LedSense<>(List.of("instead of"), Slots.ANY_VARIETY.sense()));

    static final List<Slot<?>> SLOTS = List.of(CAME, SHORT, FIRM, SOFT, MOULDY, SENT, INSTEAD_OF);

    private record Came(int bulbs, int ordered) {}

    /** {@code 2 soft}, {@code no mould}. */
    private static Slot<Integer> counted(String as) {
        return Slot.one(
                "",
                Senses.matching(
                        "(?:(\\d{1,5})|no|none) (?:bulbs? )?(?:with )?(?:" + as + ")",
                        said -> Heard.as(said.has(1) ? said.number(1) : 0)));
    }

    /** Whether it says how many came. */
    boolean countsBulbs() {
        return filled.has(CAME)
                || filled.get(PurchaseFacts.COUNT).filter(bulbs -> bulbs > 0).isPresent();
    }

    /** Bulbs that came; what was ordered less what is short, where only that is said. */
    int count(Purchase before) {
        Optional<Integer> written = filled.get(PurchaseFacts.COUNT).filter(bulbs -> bulbs > 0);
        Optional<Integer> known = before.arrival().ordered();
        return filled.get(CAME)
                .map(Came::bulbs)
                .or(() -> written.filter(bulbs -> known.isPresent()))
                .or(() -> filled.get(SHORT).map(less -> known.or(() -> written).orElse(before.count()) - less))
                .or(() -> written)
                .orElse(before.count());
    }

    /** The arrival with what is written put over what it was. */
    Arrival over(Purchase before) {
        Arrival was = before.arrival();
        int count = count(before);
        return new Arrival(
                ordered(before).filter(ordered -> ordered != count),
                filled.get(INSTEAD_OF)
                        .map(named -> named.thing().id())
                        .or(() -> filled.get(SENT).map(sent -> before.variety()))
                        .or(was::insteadOf),
                filled.get(FIRM).or(was::firm),
                filled.get(SOFT).or(was::soft),
                filled.get(MOULDY).or(was::mouldy),
                filled.get(Slots.FREE).orElse(was.note()));
    }

    private Optional<Integer> ordered(Purchase before) {
        return filled.get(CAME)
                .map(Came::ordered)
                .or(() -> before.arrival().ordered())
                .or(() -> filled.has(SHORT)
                        ? filled.get(PurchaseFacts.COUNT).or(() -> Optional.of(before.count()))
                        : Optional.empty());
    }

    /** Asks where the numbers do not go together; whether they do. */
    boolean goTogether(Purchase before, Draft draft) {
        int count = count(before);
        int looked = filled.get(FIRM).orElse(0)
                + filled.get(SOFT).orElse(0)
                + filled.get(MOULDY).orElse(0);
        if (count < 1) {
            draft.ask("none came", "Then none came. Leave them ordered, or write rejected and the variety.");
        } else if (looked > count) {
            draft.ask(
                    "too many",
                    "Firm, soft and mouldy are " + looked + " together, and " + count
                            + " came. Write each bulb once, under the worst of it.");
        }
        return count >= 1 && looked <= count;
    }

    /** The variety that was ordered, where the line says that another was sent. */
    private Optional<Variety> ordered() {
        return filled.get(INSTEAD_OF)
                .or(() -> filled.get(SENT).flatMap(sent -> filled.get(Slots.ANY_VARIETY)))
                .map(Named::thing);
    }

    void say(Purchase purchase, Draft draft) {
        Arrival arrival = purchase.arrival();
        if (purchase.missing() > 0) {
            draft.means(purchase.missing() + " short: " + (purchase.count() + purchase.missing()) + " were ordered");
        }
        arrival.ordered()
                .filter(ordered -> ordered < purchase.count())
                .ifPresent(
                        ordered -> draft.means(purchase.count() - ordered + " more than the " + ordered + " ordered"));
        counted(arrival, draft);
        ordered().ifPresent(variety -> draft.means("sent instead of " + Lines.quoted(variety.name())));
        filled.get(Slots.FREE).ifPresent(words -> draft.means("on arrival: " + words));
        if (arrival.unsound() > 0 && purchase.state() == State.IN_HAND) {
            draft.remark(
                    "unsound-bulbs",
                    "Soft and mouldy bulbs are not for planting: " + Counts.of(purchase.sound(), "bulb") + " in hand.");
        }
    }

    private static void counted(Arrival arrival, Draft draft) {
        arrival.firm().ifPresent(bulbs -> draft.means(bulbs + " firm"));
        arrival.soft().ifPresent(bulbs -> draft.means((bulbs == 0 ? "none" : bulbs) + " soft"));
        arrival.mouldy().ifPresent(bulbs -> draft.means((bulbs == 0 ? "none" : bulbs) + " with mould"));
    }
}
