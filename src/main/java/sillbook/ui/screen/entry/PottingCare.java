// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.PotUp;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Kind;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.words.CautionWords;
import sillbook.words.line.Bench;
import sillbook.words.line.QuickLine;

/**
 * What to beware of while a form of pots is filled in: of the kind once its variety is named, of dust where the potting mix
 * is asked for and while nothing is named.
 *
 * @param variety where the variety is named
 * @param dusty where it is about potting mix
 */
record PottingCare(Part variety, List<Blank> dusty) {
    PottingCare {
        dusty = List.copyOf(dusty);
    }

    Optional<String> says(State state, Answers answers, Blank blank, Bench bench) {
        CautionWords words =
                new CautionWords(state.kit().handbook(), state.journal().settings());
        Optional<String> ofKind = Optional.of(answers.text(variety.blank()))
                .filter(named -> !named.isBlank() && !dusty.contains(blank))
                .flatMap(named -> kinds(named, bench).stream().findFirst())
                .map(words::brief);
        return ofKind.or(words::beforePotting).map(caution -> "▴ " + caution);
    }

    /** One bulb in one pot, and the name is understood as it is in the whole line. */
    private static List<Kind> kinds(String named, Bench bench) {
        return QuickLine.read(named + " x1", bench).change().stream()
                .flatMap(change -> kinds(change, bench))
                .toList();
    }

    private static Stream<Kind> kinds(Change change, Bench bench) {
        List<Change> changes = change instanceof Together together ? together.changes() : List.of(change);
        List<Variety> known = new ArrayList<>(bench.journal().varieties().all());
        changes.stream()
                .filter(WriteDown.class::isInstance)
                .map(made -> ((WriteDown) made).entity())
                .filter(Variety.class::isInstance)
                .forEach(made -> known.add((Variety) made));
        return changes.stream()
                .filter(PotUp.class::isInstance)
                .flatMap(pots -> ((PotUp) pots).plantings().stream())
                .map(Pot.Planting::variety)
                .flatMap(id -> known.stream().filter(one -> one.id().equals(id)))
                .map(Variety::kind);
    }
}
