// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.words.Terms;

/**
 * {@code bought 30 Marrow Lane, grade 12+, 9.50}: bulbs bought or ordered are written down; {@code arrived}, {@code rejected}
 * and {@code purchase} change the last ones of a variety.
 */
final class PurchaseForm implements Form {
    private static final String TO_ORDER = "to order";

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "purchase",
                "Bought, ordered or to order, the count and the variety; then grade, price with its decimals, from whom, grown in, how they arrived (27 of 30 or "
                        + "3 short, 24 firm, 2 soft, 1 mould, or a few words), sent another variety instead, how long they were cooled, "
                        + "where they wait, the day. Arrived, rejected or purchase and a variety change its last one; so does ordered without "
                        + "a count, of one that was to order.",
                "bought 30 Marrow Lane, grade 12+, 9.50, from Harbour Seeds, firm, cooled 6 weeks",
                "to order 12 Marrow Lane",
                "ordered 20 Penny Gloaming (crocus)",
                "arrived Marrow Lane, 27 of 30, 2 soft, 1 mould, fridge",
                "arrived Marrow Lane, sent Soot and Honey (tulip triumph), all firm");
    }

    @Override
    public List<String> keywords() {
        return List.of("bought", "ordered", TO_ORDER, "arrived", "rejected", "purchase");
    }

    @Override
    public List<Slot<?>> slots() {
        return PurchaseFacts.SLOTS;
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.ANY_VARIETY) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        String keyword = filled.line().folded(0, 1);
        filled.get(Slots.ANY_VARIETY)
                .ifPresentOrElse(
                        variety -> {
                            if (keyword.equals("bought")) {
                                buy(variety, State.IN_HAND, filled, draft);
                            } else if (keyword.equals("ordered")) {
                                order(variety, filled, draft);
                            } else if (filled.line().folded(0, 2).equals(TO_ORDER)) {
                                buy(variety, State.TO_ORDER, filled, draft);
                            } else {
                                change(variety.thing(), keyword, filled, draft);
                            }
                        },
                        () -> draft.ask("which variety?", "Which variety? Write its name, as: bought 30 Marrow Lane."));
    }

    /** Without a count what was to order is ordered now. */
    private static void order(Named<Variety> variety, Filled filled, Draft draft) {
        Optional<Purchase> wanted = new ArrivalFacts(filled).countsBulbs()
                ? Optional.empty()
                : last(variety.thing(), List.of(State.TO_ORDER), draft.bench());
        wanted.ifPresentOrElse(
                purchase -> write(purchase.orderedOn(Day.on(draft.bench().today())), filled, draft),
                () -> buy(variety, State.ORDERED, filled, draft));
    }

    private static void buy(Named<Variety> variety, State state, Filled filled, Draft draft) {
        Day day = Slots.day(filled, draft.bench());
        Season season = state == State.TO_ORDER
                ? draft.bench().journal().chosenFor(day.likely())
                : draft.bench().journal().seasonOf(day.likely());
        Purchase plain = Purchase.of(draft.bench().ids().next(), variety.thing().id(), season, day, 1, state);
        if (new ArrivalFacts(filled).countsBulbs()) {
            write(plain, filled, draft);
        } else {
            draft.ask(
                    "how many?",
                    "How many bulbs? Write the number first, as: bought 30 "
                            + variety.thing().name() + ".");
        }
    }

    private static void change(Variety variety, String keyword, Filled filled, Draft draft) {
        Variety ordered = filled.get(ArrivalFacts.INSTEAD_OF).map(Named::thing).orElse(variety);
        boolean isArrival = keyword.equals("arrived");
        Bench bench = draft.bench();
        Optional<Purchase> meant = isArrival
                ? last(ordered, List.of(State.ORDERED), bench).or(() -> last(ordered, List.of(State.TO_ORDER), bench))
                : last(ordered, List.of(State.values()), bench);
        meant.ifPresentOrElse(
                last -> write(inState(last, keyword, draft.bench()), filled, draft),
                () -> draft.ask(
                        "no purchase",
                        "No " + (isArrival ? "order" : "purchase") + " of "
                                + Lines.quoted(ordered.name()) + " is in the book. Write: bought 30 "
                                + ordered.name() + "."));
    }

    private static Optional<Purchase> last(Variety variety, List<State> states, Bench bench) {
        return bench.journal().purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety.id()))
                .filter(purchase -> states.contains(purchase.state()))
                .max(Comparator.comparing(Purchase::day));
    }

    private static Purchase inState(Purchase before, String keyword, Bench bench) {
        return switch (keyword) {
            case "arrived" -> before.arrivedOn(Day.on(bench.today()));
            case "rejected" -> before.rejected();
            default -> before;
        };
    }

    private static void write(Purchase before, Filled filled, Draft draft) {
        PurchaseFacts facts = new PurchaseFacts(filled);
        if (!new ArrivalFacts(filled).goTogether(before, draft)) {
            return;
        }
        List<Variety> made = Stream.of(Slots.ANY_VARIETY, ArrivalFacts.SENT, ArrivalFacts.INSTEAD_OF)
                .flatMap(slot -> filled.get(slot).stream())
                .filter(Named::isNew)
                .map(Named::thing)
                .toList();
        made.forEach(variety -> draft.means("a new variety: " + Lines.quoted(variety.name()) + ", " + variety.kind()));
        Purchase purchase = facts.over(before);
        draft.means(purchase.count() + " " + Lines.quoted(name(facts, purchase, draft.bench())) + ", "
                + Terms.STATES.say(purchase.state()));
        facts.say(happened(purchase, filled), purchase, draft);
        new DayInName(filled).remark(Slots.ANY_VARIETY, draft);
        List<Change> changes = new ArrayList<>();
        made.forEach(variety -> changes.add(new WriteDown(variety)));
        filled.get(Slots.ANY_PLACE).filter(Named::isNew).ifPresent(place -> changes.add(new WriteDown(place.thing())));
        changes.add(new WriteDown(purchase));
        draft.change(changes.size() == 1 ? changes.get(0) : new Together("", changes));
    }

    private static String happened(Purchase purchase, Filled filled) {
        if (purchase.state() == State.TO_ORDER) {
            return "wanted since";
        }
        if (purchase.state() == State.ORDERED) {
            return "ordered";
        }
        return filled.line().folded(0, 1).equals("arrived") ? "arrived" : "bought";
    }

    private static String name(PurchaseFacts facts, Purchase purchase, Bench bench) {
        return facts.variety()
                .map(Named::thing)
                .orElseGet(() -> bench.journal().varieties().get(purchase.variety()))
                .name();
    }
}
