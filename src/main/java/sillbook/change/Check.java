// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Purchase.State;
import sillbook.model.Subject;

/**
 * Pots, and bulbs that wait to be potted, are looked at.
 *
 * @param found what was seen, pot by pot; kept in the terms of the way each is grown
 * @param felt what was found of dry bulbs, purchase by purchase
 * @param round the place whose round this is; every pot that stands there is then in {@code found}
 */
public record Check(Map<Id<Pot>, Findings> found, Map<Id<Purchase>, Findings> felt, Optional<Id<Place>> round, Day day)
        implements Change {
    /** Taller than any bulb that is forced, so that a slip of the pen is not taken for a warm cellar (common practice). */
    private static final double TALLEST_CM = 120;

    public Check {
        found = Collections.unmodifiableMap(new LinkedHashMap<>(found));
        felt = Collections.unmodifiableMap(new LinkedHashMap<>(felt));
    }

    /** A look at pots alone. */
    public Check(Map<Id<Pot>, Findings> found, Optional<Id<Place>> round, Day day) {
        this(found, Map.of(), round, day);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.of(found.keySet().stream(), felt.keySet().stream(), round.stream())
                .flatMap(ids -> ids);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        Optional<Refusal> bulbs = felt.keySet().stream()
                .flatMap(purchase -> notHere(journal.purchases().get(purchase), journal).stream())
                .findFirst();
        return Rules.firstOf(pots(journal, hand), bulbs)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(name(journal), edits(journal, hand)));
    }

    private Optional<Refusal> pots(Journal journal, Hand hand) {
        return found.isEmpty() && !felt.isEmpty()
                ? Rules.hasHappened(day, hand)
                : Rules.firstOf(Rules.growing(journal, found.keySet(), day, hand), tooTall());
    }

    private Optional<Refusal> tooTall() {
        return found.values().stream()
                .flatMap(findings -> findings.shoot().stream())
                .filter(shoot -> shoot.centimetres() > TALLEST_CM)
                .findFirst()
                .flatMap(shoot -> Rules.refuse("A shoot of " + Math.round(shoot.centimetres())
                        + " cm is taller than bulbs in pots grow. Write it again, as 2.5 cm."));
    }

    private Optional<Refusal> notHere(Purchase bulbs, Journal journal) {
        String whose = "The bulbs of " + Said.variety(journal, bulbs.variety());
        if (bulbs.state() != State.IN_HAND) {
            return Rules.refuse(whose + " are not here. Write first that they came.");
        }
        return day.latest().isBefore(bulbs.day().earliest())
                ? Rules.refuse(whose + " came on " + Said.day(bulbs.day().likely()) + ", after "
                        + Said.day(day.likely()) + ". Write a later day.")
                : Optional.empty();
    }

    private List<Edit> edits(Journal journal, Hand hand) {
        List<Edit> edits = new ArrayList<>();
        found.forEach((pot, findings) -> edits.add(new Edit.Put(hand.event(
                journal,
                new Subject.OfPot(pot),
                day,
                seen(findings, journal.pots().get(pot))))));
        felt.forEach((purchase, findings) -> edits.add(new Edit.Put(hand.event(
                journal, new Subject.OfPurchase(purchase), day, new Happening.Checked(findings.ofDryBulbs())))));
        return edits;
    }

    private static Happening seen(Findings findings, Pot pot) {
        return new Happening.Checked(findings.in(pot.way()));
    }

    private String name(Journal journal) {
        return round.map(place -> "round of " + Said.place(journal, place) + howMuch())
                .orElseGet(() -> who(journal) + " checked");
    }

    private String howMuch() {
        String pots = found.isEmpty() ? "" : ", " + Said.plural(found.size(), "pot");
        return felt.isEmpty() ? pots : pots + ", dry bulbs";
    }

    private String who(Journal journal) {
        Stream<String> pots = found.isEmpty() ? Stream.of() : Stream.of(Said.labels(journal, found.keySet()));
        Stream<String> bulbs = felt.keySet().stream()
                .map(purchase -> "bulbs of "
                        + Said.variety(
                                journal, journal.purchases().get(purchase).variety()));
        return Stream.concat(pots, bulbs.distinct()).collect(Collectors.joining(", "));
    }
}
