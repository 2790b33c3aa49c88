// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
                "Bought or ordered, the count and the variety; then grade, price, from whom, how they arrived, how long they "
                        + "were cooled, where they wait, the day. Arrived, rejected or purchase and a variety change its last one.",
                "bought 30 Marrow Lane, grade 12+, 9.50, from Harbour Seeds, firm, cooled 6 weeks",
                "ordered 20 Penny Gloaming (crocus)",
                "arrived Marrow Lane, soft, fridge");
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
        Optional<Integer> count = filled.get(PurchaseFacts.COUNT).filter(bulbs -> bulbs > 0);
        if (count.isEmpty()) {
            draft.ask(
                    "how many?",
                    "How many bulbs? Write the number first, as: bought 30 "
                            + variety.thing().name() + ".");
            return;
        }
        Day day = Slots.day(filled, draft.bench());
        Purchase plain = new Purchase(
                draft.bench().ids().next(),
                variety.thing().id(),
                draft.bench().journal().seasonOf(day.likely()),
                day,
                count.get(),
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                ordered ? State.ORDERED : State.IN_HAND,
                "");
        if (variety.isNew()) {
            draft.means("a new variety: " + Lines.quoted(variety.thing().name()) + ", "
                    + variety.thing().kind());
        }
        write(plain, variety, filled, draft);
    }

    private static void change(Variety variety, String keyword, Filled filled, Draft draft) {
        List<State> states = keyword.equals("arrived") ? List.of(State.ORDERED) : List.of(State.values());
        draft.bench().journal().purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety.id()))
                .filter(purchase -> states.contains(purchase.state()))
                .max(Comparator.comparing(Purchase::day))
                .ifPresentOrElse(
                        last -> write(
                                inState(last, keyword, draft.bench()), new Named<>(variety, false), filled, draft),
                        () -> draft.ask(
                                "no purchase",
                                "No " + (states.size() == 1 ? "order" : "purchase") + " of "
                                        + Lines.quoted(variety.name()) + " is in the book. Write: bought 30 "
                                        + variety.name() + "."));
    }

    /** What arrives is dated by the day it came, today unless another is written: dry cold is counted from it. */
    private static Purchase inState(Purchase before, String keyword, Bench bench) {
        return switch (keyword) {
            case "arrived" -> PurchaseFacts.inState(before, State.IN_HAND, Day.on(bench.today()));
            case "rejected" -> PurchaseFacts.inState(before, State.REJECTED, before.day());
            default -> before;
        };
    }

    private static void write(Purchase before, Named<Variety> variety, Filled filled, Draft draft) {
        Purchase purchase = new PurchaseFacts(filled).over(before);
        draft.means(purchase.count() + " " + Lines.quoted(variety.thing().name()) + ", "
                + Terms.STATES.say(purchase.state()));
        new PurchaseFacts(filled).say(purchase, draft);
        List<Change> changes = new ArrayList<>();
        if (variety.isNew()) {
            changes.add(new WriteDown(variety.thing()));
        }
        filled.get(Slots.ANY_PLACE).filter(Named::isNew).ifPresent(place -> changes.add(new WriteDown(place.thing())));
        changes.add(new WriteDown(purchase));
        draft.change(changes.size() == 1 ? changes.get(0) : new Together("", changes));
    }
}
