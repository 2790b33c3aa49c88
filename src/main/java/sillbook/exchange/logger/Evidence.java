// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import sillbook.model.DateOrder;
import sillbook.words.logger.Understood.Proof;

/** What the lines of a file say about one order of day, month and year. */
final class Evidence {
    /** Days between the dates of two lines that follow each other closely. */
    private static final int CLOSE_DAYS = 3;

    private static final int ENOUGH_STEPS = 2;
    private static final long DAY = 86_400;

    private final DateOrder order;
    private final ZoneRules rules;
    private long day = Calendar.NONE;
    private long broken;
    private Optional<Proof> firstBroken = Optional.empty();
    private int closeSteps;
    private Optional<Proof> lastClose = Optional.empty();
    private long firstLocal = Calendar.NONE;
    private long leftOut;
    private long certainFrom = Long.MAX_VALUE;
    private long certainUntil = Long.MIN_VALUE;

    Evidence(DateOrder order, ZoneRules rules) {
        this.order = order;
        this.rules = rules;
    }

    /**
     * A line with another date than the one before it.
     *
     * @param written that line, and the date before it
     */
    void date(Moment moment, Supplier<Proof> written) {
        long before = day;
        day = Calendar.day(moment.date(), order);
        if (day != Calendar.NONE && before != Calendar.NONE && Math.abs(day - before) <= CLOSE_DAYS) {
            closeSteps++;
            lastClose = closeSteps <= ENOUGH_STEPS ? Optional.of(written.get()) : lastClose;
        }
    }

    /** A line, its date as the last that was told. */
    void line(Moment moment, Supplier<Proof> written) {
        if (day == Calendar.NONE) {
            firstBroken = firstBroken.or(() -> Optional.of(written.get()));
            broken++;
            return;
        }
        long local = day * DAY + moment.secondOfDay();
        firstLocal = firstLocal == Calendar.NONE ? local : firstLocal;
        if (!moment.hasOffset() && isLeftOut(local)) {
            leftOut++;
        }
    }

    /** Whether clocks of the zone skip that hour. The zone is asked near a change only. */
    private boolean isLeftOut(long local) {
        if (local >= certainFrom && local < certainUntil) {
            return false;
        }
        LocalDateTime time = LocalDateTime.ofEpochSecond(local, 0, ZoneOffset.UTC);
        ZoneOffsetTransition change = rules.getTransition(time);
        if (change != null) {
            return change.isGap();
        }
        certainFrom = local;
        certainUntil = beginning(rules.nextTransition(time.toInstant(rules.getOffset(time))));
        return false;
    }

    private static long beginning(@Nullable ZoneOffsetTransition change) {
        return change == null
                ? Long.MAX_VALUE
                : Math.min(
                        change.getDateTimeBefore().toEpochSecond(ZoneOffset.UTC),
                        change.getDateTimeAfter().toEpochSecond(ZoneOffset.UTC));
    }

    DateOrder order() {
        return order;
    }

    /** How many lines have no date in this order. */
    long broken() {
        return broken;
    }

    /** The first such line. */
    Optional<Proof> firstBroken() {
        return firstBroken;
    }

    /** Whether dates follow each other closely in this order, more than once. */
    boolean isSteady() {
        return closeSteps >= ENOUGH_STEPS;
    }

    /** Whether dates never do. */
    boolean isErratic() {
        return closeSteps == 0;
    }

    /** A line whose date does. */
    Optional<Proof> close() {
        return lastClose;
    }

    /** Whether a line stands in an hour that clocks of the zone leave out. */
    boolean staysBehind() {
        return leftOut > 0;
    }

    /** The first line's time, by its own clock; only where any line has one in this order. */
    LocalDateTime firstTime() {
        return LocalDateTime.ofEpochSecond(firstLocal, 0, ZoneOffset.UTC);
    }
}
