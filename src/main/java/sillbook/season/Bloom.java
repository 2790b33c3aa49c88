// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Flowered;
import sillbook.model.Id;
import sillbook.model.Variety;

/**
 * The points of a pot's bloom: of the pot, from the first flower of the first variety to the last of the last, and of
 * each variety that has its own.
 */
public record Bloom(Points pot, Map<Id<Variety>, Points> varieties) {

    static final Bloom NONE = new Bloom(Points.NONE, Map.of());

    public Bloom {
        varieties = Map.copyOf(varieties);
    }

    /** The points reached so far, in order. */
    public record Points(Optional<Day> firstFlower, Optional<Day> fullBloom, Optional<Day> pastBloom) {
        static final Points NONE = new Points(Optional.empty(), Optional.empty(), Optional.empty());

        /** A point is reached once. */
        Points with(BloomPoint point, Day day) {
            Optional<Day> now = Optional.of(day);
            return switch (point) {
                case FIRST_FLOWER -> new Points(firstFlower.or(() -> now), fullBloom, pastBloom);
                case FULL_BLOOM -> new Points(firstFlower, fullBloom.or(() -> now), pastBloom);
                case PAST_BLOOM -> new Points(firstFlower, fullBloom, pastBloom.or(() -> now));
            };
        }
    }

    /** The same, one more point reached by the pot as a whole. */
    Bloom with(BloomPoint point, Day day) {
        return new Bloom(pot.with(point, day), varieties);
    }

    /**
     * The same, one more point reached.
     *
     * @param inPot the varieties in the pot: it is past bloom with the last of them
     */
    Bloom with(Flowered flowered, Day day, Collection<Id<Variety>> inPot) {
        if (flowered.variety().isEmpty()) {
            return with(flowered.point(), day);
        }
        Map<Id<Variety>, Points> each = new HashMap<>(varieties);
        Id<Variety> variety = flowered.variety().get();
        each.put(variety, each.getOrDefault(variety, Points.NONE).with(flowered.point(), day));
        boolean isLast = inPot.stream()
                .allMatch(one -> each.getOrDefault(one, Points.NONE).pastBloom().isPresent());
        boolean ofPot = flowered.point() != BloomPoint.PAST_BLOOM || isLast;
        return new Bloom(ofPot ? pot.with(flowered.point(), day) : pot, each);
    }

    /** The points that were written of one variety. */
    public Points of(Id<Variety> variety) {
        return varieties.getOrDefault(variety, Points.NONE);
    }

    /** Whether the pot has come to flower, in whatever point that was noticed. */
    boolean hasBegun() {
        return pot.firstFlower().isPresent()
                || pot.fullBloom().isPresent()
                || varieties.values().stream().anyMatch(points -> !points.equals(Points.NONE));
    }

    boolean isPast() {
        return pot.pastBloom().isPresent();
    }
}
