// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.list.LetterChoice;
import sillbook.words.PotNames;

/**
 * Asks how pots in bloom are, by five keys; written at once.
 *
 * @param labels what they are called
 */
record ScoreChoice(List<Id<Pot>> pots, String labels) implements LetterChoice {
    private static final List<String> SCORES = List.of("poor", "fair", "good", "very good", "splendid");

    ScoreChoice {
        pots = List.copyOf(pots);
    }

    static ScoreChoice of(State state, List<Id<Pot>> pots) {
        return new ScoreChoice(pots, new PotNames(state.journal()).labels(pots));
    }

    @Override
    public String asks() {
        return "How is " + labels;
    }

    @Override
    public List<Letter> letters(State beneath) {
        List<Letter> letters = new ArrayList<>();
        for (int score = 1; score <= SCORES.size(); score++) {
            int given = score;
            letters.add(new Letter('0' + score, SCORES.get(score - 1), () -> scored(beneath, given)));
        }
        letters.add(Letter.to(
                'o',
                "more of it",
                () -> beneath.laid(Entry.outcome(
                        pots.stream().map(beneath.journal().pots()::get).toList()))));
        return letters;
    }

    private Step scored(State beneath, int score) {
        Day today = Day.on(beneath.shown().today());
        List<Change> changes = new ArrayList<>();
        pots.forEach(pot ->
                changes.add(new WriteDown(Outcome.notJudged(beneath.kit().ids().next(), pot, Optional.empty(), today)
                        .withScore(score))));
        String name = labels + " outcome " + score + " of 5 written down";
        return Step.keep(
                beneath, new Together(name, changes), beneath.layers().over().size());
    }
}
