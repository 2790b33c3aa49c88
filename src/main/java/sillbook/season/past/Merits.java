// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the influences of one trait stand beside each other.
 *
 * @param all the highest score first; after them those that cannot be told apart, then those without a score
 * @param ties what cannot be told apart, to be said before any figure
 * @param bestPlace where scores are highest, all else being average
 * @param effectiveSize how many equally weighted points the average is worth; empty of the quick answer
 */
public record Merits(
        Trait trait, List<Merit> all, List<Tie> ties, Optional<Influence> bestPlace, OptionalDouble effectiveSize) {
    public Merits {
        all = List.copyOf(all);
        ties = List.copyOf(ties);
    }

    public List<Merit> scored() {
        return all.stream().filter(merit -> merit.scores() > 0).toList();
    }

    public List<Merit> withoutScore() {
        return all.stream().filter(merit -> merit.scores() == 0).toList();
    }

    /** Whether its plain mean is above all others', alone. */
    public boolean isBestByPlainMean(Merit merit) {
        return scored().stream()
                .filter(other -> !other.equals(merit))
                .allMatch(
                        other -> other.plainMean().orElse(0) < merit.plainMean().orElse(0));
    }

    /** The one who leads once all else is taken out; empty where nothing was worked out. */
    public Optional<Merit> leader() {
        return all.stream().filter(merit -> merit.level().isPresent()).findFirst();
    }
}
