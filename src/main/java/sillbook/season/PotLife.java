// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.Pot;
import sillbook.model.Stage;

/**
 * The history of one pot, read in order up to a day.
 *
 * @param stands where it stands; empty when nobody wrote it, or it is done
 * @param phases the stages and places so far, the last one reaching to the end of that day
 * @param uncertain the stages whose first day is only about known; {@code WAITING} stands for the potting
 */
public record PotLife(
        Pot pot,
        Standing standing,
        Optional<Stay> stands,
        List<Phase> phases,
        Optional<Day> potted,
        ColdTime cold,
        Seen seen,
        Bloom bloom,
        List<Noted<Care>> cares,
        List<Noted<String>> notes,
        Answers answers,
        Set<Stage> uncertain) {

    public PotLife {
        phases = List.copyOf(phases);
        cares = List.copyOf(cares);
        notes = List.copyOf(notes);
        uncertain = Set.copyOf(uncertain);
    }

    public Stage stage() {
        return standing.stage();
    }

    /** Potted, or standing somewhere as if it were, and not done. */
    public boolean isGrowing() {
        return !(standing instanceof Standing.Waiting) && stage() != Stage.DONE;
    }
}
