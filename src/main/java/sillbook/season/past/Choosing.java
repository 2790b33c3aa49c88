// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Purchase.Money;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.Outlook;

/**
 * What there is to choose from for a season.
 *
 * @param candidates every variety of the journal: the chosen first, those set aside last; among these the best mean score first, those
 *     without a score after them
 */
public record Choosing(Season season, List<Candidate> candidates) {
    private static final Comparator<Candidate> BY_USE = Comparator.<Candidate>comparingInt(
                    one -> one.chosen().isPresent() ? 0 : one.isSetAside() ? 2 : 1)
            .thenComparing(one -> -one.mean().orElse(0))
            .thenComparing(one -> one.variety().name(), String.CASE_INSENSITIVE_ORDER);

    public Choosing {
        candidates = List.copyOf(candidates);
    }

    /** For the season that bulbs are chosen for on the day of the outlook. */
    public static Choosing of(Journal journal, Outlook outlook) {
        return of(journal, outlook, Winters.of(journal, outlook.day()));
    }

    /** The same where the winters up to that day have been read already. */
    public static Choosing of(Journal journal, Outlook outlook, Winters winters) {
        Season season = journal.chosenFor(outlook.day());
        CandidateReading reading = new CandidateReading(journal, outlook, season, winters);
        return new Choosing(
                season,
                journal.varieties().all().stream()
                        .map(reading::of)
                        .sorted(BY_USE)
                        .toList());
    }

    public List<Candidate> chosen() {
        return candidates.stream().filter(one -> one.chosen().isPresent()).toList();
    }

    /** Bulbs of all that is chosen. */
    public int bulbs() {
        return chosen().stream().mapToInt(one -> one.chosen().orElse(0)).sum();
    }

    /** The chosen of which bulbs are missing that stand on no order yet. */
    public List<Candidate> toOrder() {
        return candidates.stream().filter(one -> one.toOrder() > 0).toList();
    }

    /** How many bulbs those are. */
    public int bulbsToOrder() {
        return candidates.stream().mapToInt(Candidate::toOrder).sum();
    }

    /** What is known of a variety; empty for one that is not in the journal. */
    public Optional<Candidate> of(Id<Variety> variety) {
        return candidates.stream()
                .filter(one -> one.variety().id().equals(variety))
                .findFirst();
    }

    /** What the chosen bulbs would cost at the last prices, one sum for each currency; what has no price is not in it. */
    public List<Money> cost() {
        return Money.sums(chosen().stream()
                .flatMap(one ->
                        one
                                .each()
                                .map(each ->
                                        new Money(each.minor() * one.chosen().orElse(0), each.currency()))
                                .stream())
                .toList());
    }

    /** How many of the chosen varieties have no price. */
    public int withoutPrice() {
        return (int) chosen().stream().filter(one -> one.each().isEmpty()).count();
    }
}
