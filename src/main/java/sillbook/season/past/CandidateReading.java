// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Choice;
import sillbook.model.Journal;
import sillbook.model.Purchase.State;
import sillbook.model.Season;
import sillbook.model.Stock;
import sillbook.model.Variety;
import sillbook.season.Outlook;

/** Reads of each variety what is to be known when bulbs are chosen. */
final class CandidateReading {
    private static final Set<State> COMING = Set.of(State.TO_ORDER, State.ORDERED);

    private final Journal journal;
    private final Outlook outlook;
    private final Season season;
    private final Winters winters;
    private final BulbPrices prices;
    private final ReasonReading reasons;

    CandidateReading(Journal journal, Outlook outlook, Season season, Winters winters) {
        this.journal = journal;
        this.outlook = outlook;
        this.season = season;
        this.winters = winters;
        this.prices = BulbPrices.of(journal);
        this.reasons = new ReasonReading(journal, outlook, winters, prices);
    }

    Candidate of(Variety variety) {
        List<Integer> scores = winters.of(variety.id()).stream()
                .flatMap(grown -> grown.score().stream())
                .toList();
        Optional<Choice> choice = journal.choice(variety.id(), season);
        return new Candidate(
                variety,
                choice,
                before(variety),
                scores,
                Stock.of(variety.id(), journal.seasonOf(outlook.day()), journal).inHand(),
                onOrder(variety),
                choice.map(one -> one.toOrder(journal)).orElse(0),
                prices.last(variety.id()),
                reasons.of(variety));
    }

    private Optional<Choice> before(Variety variety) {
        return journal.choices().all().stream()
                .filter(choice ->
                        choice.variety().equals(variety.id()) && choice.season().isBefore(season))
                .max(Comparator.comparing(Choice::season));
    }

    private int onOrder(Variety variety) {
        return journal.purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety.id()))
                .filter(purchase -> purchase.season().equals(season) && COMING.contains(purchase.state()))
                .mapToInt(purchase -> purchase.count())
                .sum();
    }
}
