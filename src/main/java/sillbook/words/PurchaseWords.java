// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** All that was written of it, as running text. */
    public String whole(Purchase purchase) {
        List<String> facts = new ArrayList<>();
        facts.add(Counts.of(purchase.count(), "bulb") + ", " + Terms.STATES.say(purchase.state()));
        facts.add(Days.full(purchase.day()));
        purchase.price().map(Prices::say).ifPresent(facts::add);
        size(purchase).map(size -> "grade " + size).ifPresent(facts::add);
        said("from ", purchase.supplier()).ifPresent(facts::add);
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

    private static Optional<String> said(String before, String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(before + text);
    }
}
