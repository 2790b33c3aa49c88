// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.model.Season;
import sillbook.reckon.effects.Proportion;

/**
 * What was grown of one variety in one winter.
 *
 * @param grown one of each pot, by label
 * @param bulbs that flowered of those planted, where flowers were counted
 */
public record VarietyWinter(Season winter, List<Grown> grown, Proportion bulbs) {
    public VarietyWinter {
        grown = List.copyOf(grown);
    }

    public int pots() {
        return grown.size();
    }

    /** One of each pot that was given one, by label. */
    public List<Integer> scores() {
        return grown.stream().flatMap(one -> one.score().stream()).toList();
    }

    public OptionalDouble mean() {
        return scores().stream().mapToInt(score -> score).average();
    }

    /** The last note of how a pot did. */
    public Optional<String> noted() {
        return grown.stream().flatMap(one -> one.note().stream()).reduce((one, later) -> later);
    }
}
