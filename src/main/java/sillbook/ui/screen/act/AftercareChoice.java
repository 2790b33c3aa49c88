// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import sillbook.change.CareFor;
import sillbook.change.Change;
import sillbook.change.Close;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.list.LetterChoice;
import sillbook.words.PotNames;

/**
 * Asks what becomes of pots that are past bloom, by one key; written at once.
 *
 * @param labels what they are called
 */
record AftercareChoice(List<Id<Pot>> pots, String labels) implements LetterChoice {
    AftercareChoice {
        pots = List.copyOf(pots);
    }

    static AftercareChoice of(State state, List<Id<Pot>> pots) {
        return new AftercareChoice(pots, new PotNames(state.journal()).labels(pots));
    }

    @Override
    public String asks() {
        return labels + " after the bloom";
    }

    @Override
    public List<Letter> letters(State beneath) {
        Day today = Day.on(beneath.shown().today());
        return List.of(
                letter('d', "thrown away", new Close(pots, End.FINISHED, "", today), beneath),
                letter('g', "given away", new Close(pots, End.GIVEN, "", today), beneath),
                letter('p', "planted out", new CareFor(pots, Care.PLANTED_OUT, today), beneath),
                letter('l', "leaves cut", new CareFor(pots, Care.LEAVES_CUT, today), beneath),
                letter('f', "fed", new CareFor(pots, Care.FED, today), beneath));
    }

    private static Letter letter(char key, String words, Change change, State beneath) {
        return new Letter(
                key,
                words,
                () -> Step.keep(beneath, change, beneath.layers().over().size()));
    }
}
