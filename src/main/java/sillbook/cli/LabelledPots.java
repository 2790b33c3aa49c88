// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Id;
import sillbook.model.LabelRun;
import sillbook.model.Pot;

/**
 * Pots by labels and runs of labels, as they are given to a command: {@code T4}, {@code T1-T6}, {@code t1-6}.
 *
 * @param pots those of the season, by label
 * @param season its name, to say where none was found
 */
record LabelledPots(List<Pot> pots, String season) {
    /**
     * All that were meant, each once.
     *
     * @throws CouldNot when one of the labels names no pot
     */
    List<Id<Pot>> find(List<String> labels) {
        Set<Id<Pot>> found = new LinkedHashSet<>();
        labels.forEach(label -> found.addAll(find(label)));
        return List.copyOf(found);
    }

    private List<Id<Pot>> find(String label) {
        Optional<LabelRun> run = LabelRun.parse(label);
        List<Id<Pot>> found = pots.stream()
                .filter(pot -> run.map(labels -> labels.contains(pot.label()))
                        .orElseGet(() -> pot.label().equalsIgnoreCase(label)))
                .map(Pot::id)
                .toList();
        if (found.isEmpty()) {
            throw new CouldNot(
                    "There is no pot '" + label + "' in season " + season + ". 'sillbook pots' lists those there are.");
        }
        return found;
    }
}
