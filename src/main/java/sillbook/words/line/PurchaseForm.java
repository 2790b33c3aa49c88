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
import sillbook.model.Arrival;
import sillbook.model.Day;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Variety;
import sillbook.words.Terms;

/**
 * {@code bought 30 Marrow Lane, grade 12+, 9.50}: bulbs bought or ordered are written down; {@code arrived}, {@code rejected}
 * and {@code purchase} change the last ones of a variety.
 */
final class PurchaseForm implements Form {
    @Override
    public FormHelp help() {
        return FormHelp.of(
                "purchase",
                "Bought or ordered, the count and the variety; then grade, price, from whom, grown in, how they arrived (27 of 30 or "
                        + "3 short, 24 firm, 2 soft, 1 mould, or a few words), sent another variety instead, how long they were cooled, "
                        + "where they wait, the day. Arrived, rejected or purchase and a variety change its last one.",
                "bought 30 Marrow Lane, grade 12+, 9.50, from Harbour Seeds, firm, cooled 6 weeks",
                "ordered 20 Penny Gloaming (crocus)",
                "arrived Marrow Lane, 27 of 30, 2 soft, 1 mould, fridge",
                "arrived Marrow Lane, sent Soot and Honey (tulip triumph), all firm");
    }

    @Override
    public List<String> keywords() {
        return List.of("bought", "ordered", "arrived", "rejected", "purchase");
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
                            if (keyword.equals("bought") || keyword.equals("ordered")) {
                                buy(variety, keyword.equals("ordered"), filled, draft);
                            } else {
                                change(variety.thing(), keyword, filled, draft);
                            }
                        },
                        () -> draft.ask("which variety?", "Which variety? Write its name, as: bought 30 Marrow Lane."));
    }

    private static void buy(Named<Variety> variety, boolean ordered, Filled filled, Draft draft) {
        Day day = Slots.day(filled, draft.bench());
        Purchase plain = new Purchase(
                draft.bench().ids().next(),
                variety.thing().id(),
                draft.bench().journal().seasonOf(day.likely()),
                day,
                1,
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                ordered ? State.ORDERED : State.IN_HAND,
                "");
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
        List<State> states = keyword.equals("arrived") ? List.of(State.ORDERED) : List.of(State.values());
        draft.bench().journal().purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(ordered.id()))
                .filter(purchase -> states.contains(purchase.state()))
                .max(Comparator.comparing(Purchase::day))
                .ifPresentOrElse(
                        last -> write(inState(last, keyword, draft.bench()), filled, draft),
                        () -> draft.ask(
                                "no purchase",
                                "No " + (states.size() == 1 ? "order" : "purchase") + " of "
                                        + Lines.quoted(ordered.name()) + " is in the book. Write: bought 30 "
                                        + ordered.name() + "."));
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
