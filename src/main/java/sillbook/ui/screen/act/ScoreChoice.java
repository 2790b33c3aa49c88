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
import sillbook.model.Variety;
import sillbook.season.PotLife;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.list.LetterChoice;
import sillbook.words.PotNames;

/**
 * Asks how pots in bloom are, by five keys; written at once. Varieties that share a pot are asked after one by one, as each is at
 * its best.
 *
 * @param variety which of those that share the pots; empty for the pots as a whole
 * @param called what is asked after, in words
 */
record ScoreChoice(List<Id<Pot>> pots, Optional<Id<Variety>> variety, String called) implements LetterChoice {
    private static final List<String> SCORES = List.of("poor", "fair", "good", "very good", "splendid");

    ScoreChoice {
        pots = List.copyOf(pots);
    }

    static ScoreChoice of(State state, List<Id<Pot>> pots) {
        String labels = new PotNames(state.journal()).labels(pots);
        Optional<Id<Variety>> variety = unscored(state, pots.get(0));
        String called = variety.map(one -> state.journal().varieties().get(one).name())
                .map(name -> "'" + name + "' in " + labels)
                .orElse(labels);
        return new ScoreChoice(pots, variety, called);
    }

    private static Optional<Id<Variety>> unscored(State state, Id<Pot> pot) {
        PotLife life = state.almanac().pot(pot).life();
        return life
                .bloom()
                .unscored(
                        life.pot(),
                        state.almanac().outlook().livingOn().outcomes(pot),
                        state.shown().today())
                .stream()
                .findFirst()
                .flatMap(one -> one);
    }

    @Override
    public String asks() {
        return "How is " + called;
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
        List<Change> changes = pots.stream()
                .<Change>map(pot -> new WriteDown(outcome(beneath, pot).withScore(score)))
                .toList();
        String name = called + " outcome " + score + " of 5 written down";
        return Step.keep(
                beneath, new Together(name, changes), beneath.layers().over().size());
    }

    /** What is written so far, for the score to be added. */
    private Outcome outcome(State beneath, Id<Pot> pot) {
        return beneath.almanac().outlook().livingOn().outcomes(pot).stream()
                .filter(written -> written.variety().equals(variety))
                .findFirst()
                .orElseGet(() -> Outcome.notJudged(
                        beneath.kit().ids().next(),
                        pot,
                        variety,
                        Day.on(beneath.shown().today())));
    }
}
