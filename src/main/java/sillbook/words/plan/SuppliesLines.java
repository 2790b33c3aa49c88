// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.plan.Supplies;
import sillbook.plan.Supplies.Bulbs;
import sillbook.plan.Supplies.Leftover;
import sillbook.plan.Supplies.Pots;
import sillbook.plan.Supplies.State;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.Vocabulary;

/** What a plan takes and what is to be had, a fact a line: who must be written to first stands first. */
public record SuppliesLines(Journal journal) {
    public static final Vocabulary<State> STATES = Vocabulary.<State>of("state of bulbs")
            .with(State.TO_BUY, "to buy")
            .with(State.TO_ORDER, "to order")
            .with(State.ORDERED, "ordered")
            .with(State.IN_HAND, "in hand")
            .with(State.SHORT, "short");

    /** By supplier, the tightest first, and so within each. */
    public static List<Bulbs> inOrder(Supplies supplies) {
        Map<String, LocalDate> first = supplies.bulbs().stream()
                .collect(Collectors.toMap(
                        Bulbs::supplier, Bulbs::orderBy, (one, other) -> one.isBefore(other) ? one : other));
        return supplies.bulbs().stream()
                .sorted(Comparator.comparing((Bulbs bulbs) -> first.get(bulbs.supplier()))
                        .thenComparing(Bulbs::supplier)
                        .thenComparing(Bulbs::orderBy))
                .toList();
    }

    public List<String> lines(Supplies supplies) {
        List<String> lines = new ArrayList<>();
        inOrder(supplies).stream().map(this::bulbs).forEach(lines::add);
        if (supplies.wanting() > 0) {
            lines.add("still to order: " + Counts.of(supplies.wanting(), "bulb") + cost(supplies));
        }
        supplies.containers().stream().map(this::pots).forEach(lines::add);
        supplies.mix().map(this::mix).ifPresent(lines::add);
        if (supplies.labels() > 0) {
            lines.add("labels: " + supplies.labels());
        }
        supplies.leftOver().stream().map(this::leftOver).forEach(lines::add);
        return lines;
    }

    /** {@code seed shop: 12 'Marrow Lane', 12+, for 2 pots, ordered; order by Sun 30 Aug, pot by Sun 13 Sep}. */
    private String bulbs(Bulbs bulbs) {
        String supplier = bulbs.supplier().isEmpty() ? "supplier not known" : bulbs.supplier();
        String grade = bulbs.grade().isEmpty() ? "" : ", " + bulbs.grade();
        String wanting = bulbs.wanting() > 0
                ? "; " + bulbs.wanting() + " to order by " + Days.day(bulbs.orderBy()) + priced(bulbs)
                : "";
        return supplier + ": " + bulbs.bulbs() + " " + new PotNames(journal).variety(bulbs.variety()) + grade + ", for "
                + Counts.of(bulbs.pots(), "pot") + ", " + STATES.say(bulbs.state()) + "; pot by "
                + Days.day(bulbs.potBy())
                + wanting;
    }

    private static String priced(Bulbs bulbs) {
        return bulbs.cost()
                .map(cost -> ", about " + PlanSum.cost(List.of(cost)))
                .orElse(", no price known");
    }

    private static String cost(Supplies supplies) {
        String about = supplies.cost().isEmpty() ? "" : ", about " + PlanSum.cost(supplies.cost());
        int without = supplies.withoutPrice();
        return about + (without == 0 ? "" : ", " + Counts.of(without, "sort") + " without a price");
    }

    /** {@code pan 15 cm: 12 needed, 4 free, 1 of them to wash, 8 to buy}. */
    public String pots(Pots pots) {
        String wash = pots.toWash() == 0 ? "" : ", " + pots.toWash() + " to wash first";
        String buy = pots.toBuy() == 0 ? "" : ", " + pots.toBuy() + " to buy";
        String needed = pots.needed() == 0 ? "none" : Integer.toString(pots.needed());
        return journal.containers().get(pots.container()).name() + ": " + needed + " needed, " + pots.free() + " free"
                + wash + buy;
    }

    /** {@code potting mix: 4.9 L of sill mix: 2.5 L loam, 2.4 L sand; without 2 pots of no known size}. */
    public String mix(Supplies.Mix mix) {
        String without =
                mix.withoutSize() == 0 ? "" : "; without " + Counts.of(mix.withoutSize(), "pot") + " of no known size";
        return "potting mix: " + new SuppliesWords(journal).mix(mix) + without;
    }

    /** {@code left over: 3 'Inkwell', in the cellar}. */
    public String leftOver(Leftover left) {
        Purchase purchase = journal.purchases().get(left.purchase());
        String where = purchase.waits()
                .map(place -> ", in the " + journal.places().get(place).name())
                .orElse("");
        return "left over: " + left.bulbs() + " " + new PotNames(journal).variety(left.variety()) + where;
    }
}
