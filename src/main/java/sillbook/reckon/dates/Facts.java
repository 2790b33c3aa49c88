// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What is known of one pot.
 *
 * @param happened stages that have really begun, and when; each pins its own day and what follows
 * @param wish the day it should be in flower
 * @param dryDays days of cold its bulbs had dry, before they were potted
 */
public record Facts(
        Optional<LocalDate> potted, Map<Milestone, LocalDate> happened, Optional<LocalDate> wish, int dryDays) {

    public static final Facts NONE = new Facts(Optional.empty(), Map.of(), Optional.empty(), 0);

    public Facts {
        happened = Map.copyOf(happened);
        if (dryDays < 0 || dryDays > DayCount.LONGEST) {
            throw new IllegalArgumentException("no number of days already cooled: " + dryDays);
        }
    }

    public Facts withPotted(LocalDate day) {
        return new Facts(Optional.of(day), happened, wish, dryDays);
    }

    /** The same, with the day a stage began; also to ask what would follow if it began then. */
    public Facts with(Milestone milestone, LocalDate day) {
        var more = new EnumMap<Milestone, LocalDate>(Milestone.class);
        more.putAll(happened);
        more.put(milestone, day);
        return new Facts(potted, more, wish, dryDays);
    }

    public Facts withWish(LocalDate day) {
        return new Facts(potted, happened, Optional.of(day), dryDays);
    }

    public Facts withoutWish() {
        return new Facts(potted, happened, Optional.empty(), dryDays);
    }

    /** Dry cold in weeks; half a day rounds up. */
    public Facts withDryWeeks(double weeks) {
        return new Facts(potted, happened, wish, DayCount.daysOfWeeks(weeks));
    }

    public Optional<LocalDate> on(Milestone milestone) {
        return Optional.ofNullable(happened.get(milestone));
    }

    /** Whether it stands, or stood, in a warm room without a cool one before, as far as its beginning is known. */
    boolean isWarmAtOnce() {
        boolean isBegunKnown = potted.isPresent() || on(Milestone.COLD).isPresent();
        return isBegunKnown
                && on(Milestone.WARM_ROOM).isPresent()
                && on(Milestone.COOL_ROOM).isEmpty();
    }

    /**
     * Days from the end of the cold, or from potting where no cold is needed, to the warm room; empty where either is
     * not known.
     */
    Optional<Integer> daysBeforeWarmth(boolean needsCold) {
        Optional<LocalDate> atOnce = on(Milestone.WARM_ROOM).filter(day -> isWarmAtOnce());
        Optional<LocalDate> left = on(Milestone.COOL_ROOM).or(() -> needsCold ? atOnce : potted.or(() -> atOnce));
        return left.flatMap(from ->
                on(Milestone.WARM_ROOM).map(to -> Math.max(0, (int) ChronoUnit.DAYS.between(from, to))));
    }

    /** The first day that lies before one it should follow; empty when all are in order. */
    public Optional<Disorder> disorder() {
        LocalDate last = potted.orElse(LocalDate.MIN);
        for (Milestone milestone : Milestone.values()) {
            LocalDate day = on(milestone).orElse(last);
            if (day.isBefore(last)) {
                return Optional.of(new Disorder(milestone, day, last));
            }
            last = day;
        }
        return Optional.empty();
    }

    /**
     * Two days that cannot both be.
     *
     * @param milestone the stage that would have begun too soon
     * @param notBefore the day of potting, or of an earlier stage
     */
    public record Disorder(Milestone milestone, LocalDate day, LocalDate notBefore) {}
}
