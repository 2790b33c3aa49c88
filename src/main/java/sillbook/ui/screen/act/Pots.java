// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.season.PotNow;
import sillbook.ui.screen.State;
import sillbook.words.Counts;
import sillbook.words.PotNames;

/**
 * The pots something is done to.
 *
 * @param fit those it can be done to
 * @param leftOut the others, which are named and left out
 */
public record Pots(List<Id<Pot>> fit, List<Id<Pot>> leftOut) {

    public Pots {
        fit = List.copyOf(fit);
        leftOut = List.copyOf(leftOut);
    }

    /** Of some pots those that the test lets pass. */
    static Pots of(State state, List<Id<Pot>> meant, Predicate<PotNow> fits) {
        List<Id<Pot>> fit = new ArrayList<>();
        List<Id<Pot>> leftOut = new ArrayList<>();
        meant.forEach(pot -> (fits.test(state.almanac().pot(pot)) ? fit : leftOut).add(pot));
        return new Pots(fit, leftOut);
    }

    /** Those that are potted and not done. */
    public static Pots growing(State state, List<Id<Pot>> meant) {
        return of(state, meant, pot -> pot.life().isGrowing());
    }

    /** {@code Move 3 pots: T1 T3 C2}; of one {@code Move T4}. */
    String title(State state, String verb) {
        String labels = new PotNames(state.journal()).labels(fit);
        return fit.size() == 1 ? verb + " " + labels : verb + " " + Counts.of(fit.size(), "pot") + ": " + labels;
    }

    /** {@code Left out: T9, which is not growing.} Empty when all fit. */
    String leftOutWords(State state, String why) {
        if (leftOut.isEmpty()) {
            return "";
        }
        String labels = new PotNames(state.journal()).labels(leftOut);
        return "Left out: " + labels + ", " + (leftOut.size() == 1 ? "which is " : "which are ") + why + ".";
    }
}
