// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The forcing schedule of one pot: when each stage starts, whether its wish can be met, and what to beware of.
 *
 * <p>From a day that is known (potted, put in the cold, or any stage that has begun) the published lengths are added up
 * forward: lows to the earliest, highs to the latest day. Where only a wish is known they are taken off backward. A
 * stage that has begun pins its own day and what follows. Where something began and there is a wish as well, the wish
 * moves nothing; it is judged.
 *
 * @param judgement of the wish; empty when there is none, or when it is what the days were reckoned from
 * @param assumed what was taken for granted
 */
public record Schedule(Stages stages, Optional<Judgement> judgement, List<Warning> warnings, List<Assumption> assumed) {

    public Schedule {
        warnings = List.copyOf(warnings);
        assumed = List.copyOf(assumed);
    }

    /** Something taken for granted, for want of a fact. */
    public enum Assumption {
        /** The cold began on the day of potting. */
        COLD_FROM_POTTING
    }

    /**
     * Works the schedule out.
     *
     * @return empty when no day is known from which, or to which, to reckon
     * @throws IllegalArgumentException when the facts are out of order; {@link Facts#disorder} tells beforehand
     */
    public static Optional<Schedule> reckon(Need need, Facts facts) {
        facts.disorder().ifPresent(disorder -> {
            throw new IllegalArgumentException("days out of order: " + disorder);
        });
        Optional<Cold> cold = need.cold().map(days -> new Cold(days, need.coldLimit(), facts.dryDays()));
        Course course = Course.of(need, cold.map(Cold::potted), facts);
        Map<Milestone, LocalDate> pins = course.pins(facts);
        return course.firstPinned(pins)
                .map(first -> forward(course, cold, facts, pins, first))
                .or(() -> facts.wish().map(wish -> backward(course, cold, pins, wish)));
    }

    private static Schedule forward(
            Course course, Optional<Cold> cold, Facts facts, Map<Milestone, LocalDate> pins, Milestone first) {
        Stages stages = course.windows(pins, first);
        List<Warning> warnings = new ArrayList<>();
        cold.ifPresent(given -> warnings.addAll(given.warnings(pins)));
        Optional<Judgement> judgement = facts.wish().map(wish -> {
            var judge = new Judge(wish, stages, pins, first, cold);
            warnings.addAll(judge.warnings());
            return judge.judgement(course);
        });
        boolean fromPotting = cold.isPresent()
                && facts.potted().isPresent()
                && !facts.happened().containsKey(Milestone.COLD);
        return new Schedule(
                stages, judgement, warnings, fromPotting ? List.of(Assumption.COLD_FROM_POTTING) : List.of());
    }

    private static Schedule backward(
            Course course, Optional<Cold> cold, Map<Milestone, LocalDate> pins, LocalDate wish) {
        pins.put(Milestone.BLOOM, wish);
        return new Schedule(
                course.windows(pins, Milestone.BLOOM),
                Optional.empty(),
                cold.map(given -> given.warnings(Map.of())).orElse(List.of()),
                List.of());
    }
}
