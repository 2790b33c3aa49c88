// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One planted pot of one season. Its history is the events that name it.
 *
 * @param label its short name, as pencilled on the stick; unique within the season when given
 * @param plantings what is in it; the first names the pot
 * @param container the object it stands in
 * @param across its inside width, where the container is not known or says nothing
 * @param potting how it was filled
 * @param batch shared by pots made together
 * @param parent the pot of an earlier season whose plant lives on in this one
 */
public record Pot(
        Id<Pot> id,
        Season season,
        String label,
        List<Planting> plantings,
        Way way,
        Optional<Id<Container>> container,
        Optional<Length> across,
        Optional<Id<PottingMix>> pottingMix,
        Potting potting,
        Optional<Id<Batch>> batch,
        Optional<Id<Pot>> parent,
        String note)
        implements Entity<Pot> {

    public Pot {
        plantings = List.copyOf(plantings);
        if (plantings.isEmpty()) {
            throw new IllegalArgumentException("a pot has at least one variety in it");
        }
    }

    /** So many bulbs of a variety, perhaps from a known purchase. */
    public record Planting(Id<Variety> variety, int count, Optional<Id<Purchase>> purchase) {
        public Planting {
            if (count < 1) {
                throw new IllegalArgumentException("a planting has at least one bulb, not " + count);
            }
        }

        /** The entries it names. */
        public Stream<Id<?>> refersTo() {
            return Stream.concat(Stream.of(variety), purchase.stream());
        }
    }

    /** How it is grown. */
    public enum Way {
        DRAINED,
        BOWL,
        GLASS,
        PEBBLES;

        /** Whether the bulbs stand over water, without potting mix. */
        public boolean isOverWater() {
            return this == GLASS || this == PEBBLES;
        }

        /** Whether roots can be seen without lifting the bulbs: at the holes, or through the glass. */
        public boolean showsRoots() {
            return this == DRAINED || this == GLASS;
        }
    }

    /** The same pot with other bulbs in it. */
    public Pot filledWith(List<Planting> others) {
        return new Pot(id, season, label, others, way, container, across, pottingMix, potting, batch, parent, note);
    }

    /** The planting that names the pot. */
    public Planting first() {
        return plantings.get(0);
    }

    /** Whether bulbs of that variety are in it. */
    public boolean holds(Id<Variety> variety) {
        return plantings.stream().anyMatch(planting -> planting.variety().equals(variety));
    }

    /** How many bulbs of that variety are in it. */
    public int bulbsOf(Id<Variety> variety) {
        return plantings.stream()
                .filter(planting -> planting.variety().equals(variety))
                .mapToInt(Planting::count)
                .sum();
    }

    /** How many bulbs of that purchase are in it. */
    public int bulbsFrom(Id<Purchase> purchase) {
        return plantings.stream()
                .filter(planting -> planting.purchase().equals(Optional.of(purchase)))
                .mapToInt(Planting::count)
                .sum();
    }

    /** One that waits to be potted, of which nothing more is known than what is to be in it. */
    public static Pot waiting(
            Id<Pot> id, Season season, String label, List<Planting> plantings, Optional<Id<Container>> container) {
        return new Pot(
                id,
                season,
                label,
                plantings,
                Way.DRAINED,
                container,
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                "");
    }

    public boolean isMixed() {
        return plantings.size() > 1;
    }

    /**
     * Whether it is said how the pot did, as a whole or of each variety in it.
     *
     * @param written outcomes of this pot
     */
    public boolean isJudged(Collection<Outcome> written) {
        Set<Optional<Id<Variety>>> judged = Outcome.judged(written);
        return judged.contains(Optional.<Id<Variety>>empty())
                || plantings.stream().map(Planting::variety).map(Optional::of).allMatch(judged::contains);
    }

    public int bulbs() {
        return plantings.stream().mapToInt(Planting::count).sum();
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(
                        plantings.stream().flatMap(Planting::refersTo),
                        container.stream(),
                        pottingMix.stream(),
                        parent.stream())
                .flatMap(ids -> ids);
    }
}
