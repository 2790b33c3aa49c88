// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Arrival;
import sillbook.model.Journal;
import sillbook.model.Purchase;

/** Purchases as they are said. */
public record PurchaseWords(Journal journal) {

    /** Size and cooling, in short: {@code 12+, cooled 6}. */
    public String brief(Purchase purchase) {
        Stream<String> cooled = purchase.cooled().weeks().stream().map(weeks -> "cooled " + Weeks.number(weeks));
        return Stream.concat(size(purchase).stream(), cooled).collect(Collectors.joining(", "));
    }

    private Optional<String> size(Purchase purchase) {
        String printed = purchase.grade().printed();
        return printed.isEmpty()
                ? purchase.grade()
                        .across()
                        .map(across -> Lengths.say(across, journal.settings().lengths()))
                : Optional.of(printed);
    }

    /** How many came: {@code 27}, or {@code 27 of 30} where another number was ordered. */
    public static String came(Purchase purchase) {
        return purchase.count()
                + purchase.arrival().ordered().map(ordered -> " of " + ordered).orElse("");
    }

    /** The same, as bulbs. */
    static String bulbs(Purchase purchase) {
        return purchase.arrival().ordered().isEmpty() ? Counts.of(purchase.count(), "bulb") : came(purchase) + " bulbs";
    }

    /** All that was written of it, as running text. */
    public String whole(Purchase purchase) {
        List<String> facts = new ArrayList<>();
        facts.add(bulbs(purchase) + ", " + Terms.STATES.say(purchase.state()));
        instead(purchase.arrival()).ifPresent(facts::add);
        facts.add(Days.full(purchase.day()));
        purchase.price().map(Prices::say).ifPresent(facts::add);
        size(purchase).map(size -> "grade " + size).ifPresent(facts::add);
        said("from ", purchase.supplier()).ifPresent(facts::add);
        said("grown in ", purchase.origin()).ifPresent(facts::add);
        looked(purchase).ifPresent(facts::add);
        said("arrived ", purchase.arrival().note()).ifPresent(facts::add);
        facts.add(purchase.cooled()
                .weeks()
                .map(weeks -> "cooled " + Weeks.say(weeks) + " before")
                .orElse("cooling before not known"));
        purchase.waits()
                .map(place -> "wait in the " + journal.places().get(place).name())
                .ifPresent(facts::add);
        said("", purchase.note()).ifPresent(facts::add);
        return String.join("; ", facts) + ".";
    }

    private Optional<String> instead(Arrival arrival) {
        return arrival.insteadOf().map(variety -> "sent instead of " + new PotNames(journal).variety(variety));
    }

    /** {@code 24 firm, 2 soft, 1 with mould: 24 to plant}. */
    private static Optional<String> looked(Purchase purchase) {
        Arrival arrival = purchase.arrival();
        List<String> counted = new ArrayList<>();
        arrival.firm().ifPresent(bulbs -> counted.add(bulbs + " firm"));
        arrival.soft().ifPresent(bulbs -> counted.add(bulbs + " soft"));
        arrival.mouldy().ifPresent(bulbs -> counted.add(bulbs + " with mould"));
        return counted.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", counted) + ": " + purchase.sound() + " to plant");
    }

    private static Optional<String> said(String before, String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(before + text);
    }
}
