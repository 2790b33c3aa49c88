// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.reckon.dates.Judgement.Reason;
import sillbook.reckon.dates.Judgement.Verdict;

/**
 * Weighs a wish against what has begun.
 *
 * <p>A wish is met when the pot is in flower on that day. A pot that would be over before may wait in the cold for it,
 * but only up to the longest published cold, or to the limit where one is known.
 *
 * @param first the first stage that has a fixed day
 */
record Judge(LocalDate wish, Stages stages, Map<Milestone, LocalDate> pins, Milestone first, Optional<Cold> cold) {

    Judgement judgement(Course course) {
        var toWish = new EnumMap<Milestone, LocalDate>(Map.of(Milestone.BLOOM, wish));
        return new Judgement(wish, verdict(), reason(), stages.bloom(), course.windows(toWish, Milestone.BLOOM));
    }

    List<Warning> warnings() {
        return switch (verdict()) {
            case LATE -> List.of(new Warning.Late(wish, stages.bloom()));
            case TOO_LATE -> List.of(new Warning.TooLate(wish, stages.bloom()));
            case NOT_REACHABLE ->
                reason().map(why -> List.<Warning>of(new Warning.NotReachable(wish, stages.bloom(), why)))
                        .orElse(List.of());
            case REACHABLE -> wish.isAfter(lastDay()) ? longWait() : List.of();
        };
    }

    private Verdict verdict() {
        if (reason().isPresent()) {
            return Verdict.NOT_REACHABLE;
        }
        if (wish.isBefore(stages.bloom().earliest())) {
            return Verdict.TOO_LATE;
        }
        return wish.isBefore(stages.bloom().likely()) ? Verdict.LATE : Verdict.REACHABLE;
    }

    private Optional<Reason> reason() {
        boolean beforeBloom = first.compareTo(Milestone.BLOOM) < 0;
        if (beforeBloom && !wish.isAfter(pins.get(first))) {
            return Optional.of(Reason.BEFORE_START);
        }
        return wish.isAfter(lastDay().plusDays(longestWait())) ? Optional.of(Reason.FLOWERS_BEFORE) : Optional.empty();
    }

    /** The last day on which it can be in flower without waiting longer than the longest published cold. */
    private LocalDate lastDay() {
        return stages.afterBloom()
                .map(past -> past.latest().minusDays(1))
                .orElse(stages.bloom().latest());
    }

    private int longestWait() {
        boolean isOut = pins.containsKey(Milestone.COOL_ROOM) || pins.containsKey(Milestone.WARM_ROOM);
        return isOut ? 0 : cold.map(Cold::longestWait).orElse(0);
    }

    private List<Warning> longWait() {
        int wait = (int) ChronoUnit.DAYS.between(lastDay(), wish);
        return cold.map(given -> List.<Warning>of(given.heldBack(wait))).orElse(List.of());
    }
}
