// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Flowered;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Variety;

/**
 * The points of a pot's bloom: of the pot, from the first flower of the first variety to the last of the last, and of
 * each variety that has its own.
 */
public record Bloom(Points pot, Map<Id<Variety>, Points> varieties) {

    /** Days from the first flower to full bloom, where nobody wrote it down (common practice). */
    static final int FULL_BLOOM_AFTER = 3;

    static final Bloom NONE = new Bloom(Points.NONE, Map.of());

    public Bloom {
        varieties = Map.copyOf(varieties);
    }

    /** The points reached so far, in order. */
    public record Points(Optional<Day> firstFlower, Optional<Day> fullBloom, Optional<Day> pastBloom) {
        public static final Points NONE = new Points(Optional.empty(), Optional.empty(), Optional.empty());

        /** The day it was, or will be, at its best. */
        Optional<LocalDate> best() {
            return fullBloom
                    .map(Day::likely)
                    .or(() -> firstFlower.map(first -> first.likely().plusDays(FULL_BLOOM_AFTER)))
                    .or(() -> pastBloom.map(Day::likely));
        }

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

    /**
     * Whose score is to be asked, as far as they were at their best by a day and are not judged yet: the pot as a whole, which is empty,
     * or the varieties in it, where each came to flower by itself.
     *
     * @param written what is written so far of how the pot did
     */
    public List<Optional<Id<Variety>>> unscored(Pot inPot, Collection<Outcome> written, LocalDate day) {
        if (inPot.isJudged(written)) {
            return List.of();
        }
        Set<Optional<Id<Variety>>> judged = Outcome.judged(written);
        Stream<Optional<Id<Variety>>> each = inPot.isMixed() && !varieties.isEmpty()
                ? inPot.plantings().stream()
                        .map(planting -> Optional.of(planting.variety()))
                        .distinct()
                : Stream.of(Optional.empty());
        return each.filter(one -> !judged.contains(one) && wasAtBest(one, day)).toList();
    }

    private boolean wasAtBest(Optional<Id<Variety>> one, LocalDate day) {
        return best(one).filter(best -> !best.isAfter(day)).isPresent();
    }

    /** The day one of the varieties, or the pot as a whole, was or will be at its best. */
    Optional<LocalDate> best(Optional<Id<Variety>> one) {
        return one.map(this::of).orElse(pot).best();
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
