// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Outcome.Again;
import sillbook.model.Place;
import sillbook.season.past.Grown.Rating;

/**
 * Plain counts of how some pots did.
 *
 * @param pots those that were judged
 * @param winters in how many winters any of them was grown
 * @param again what was said last of doing it again
 * @param noted the last note of how one did
 * @param onlyAt the place where all of them had their cold; empty of one pot alone, or where they stood in more than one
 */
public record Tally(
        int pots,
        int winters,
        Map<Rating, Integer> ratings,
        Optional<Again> again,
        Optional<String> noted,
        Optional<Id<Place>> onlyAt) {

    /** The largest share of well first, then the most pots. */
    public static final Comparator<Tally> BEST = Comparator.comparingDouble(Tally::shareOfWell)
            .thenComparingInt(Tally::pots)
            .reversed();

    public Tally {
        ratings = Map.copyOf(ratings);
    }

    /**
     * Counts those that were judged.
     *
     * @param grown the oldest winter first
     */
    public static Tally of(Collection<Grown> grown) {
        List<Grown> judged =
                grown.stream().filter(one -> one.rating().isPresent()).toList();
        Map<Rating, Integer> ratings = new EnumMap<>(Rating.class);
        judged.forEach(one -> one.rating().ifPresent(rating -> ratings.merge(rating, 1, Integer::sum)));
        return new Tally(
                judged.size(),
                (int) judged.stream().map(Grown::winter).distinct().count(),
                ratings,
                last(judged.stream().flatMap(one -> one.again().stream())),
                last(judged.stream().flatMap(one -> one.note().stream())),
                onlyPlace(judged));
    }

    private static <T> Optional<T> last(Stream<T> said) {
        return said.reduce((one, later) -> later);
    }

    private static Optional<Id<Place>> onlyPlace(List<Grown> judged) {
        Set<Optional<Id<Place>>> places = judged.stream().map(Grown::coldAt).collect(Collectors.toSet());
        return judged.size() > 1 && places.size() == 1 ? judged.get(0).coldAt() : Optional.empty();
    }

    public int count(Rating rating) {
        return ratings.getOrDefault(rating, 0);
    }

    /** 0 to 1; 0 where none was judged. */
    public double shareOfWell() {
        return pots == 0 ? 0 : (double) count(Rating.WELL) / pots;
    }
}
