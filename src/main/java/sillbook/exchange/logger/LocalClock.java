// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A clock on the wall, and the seconds since 1970 that it shows. Where it is put back an hour comes twice: then the instant is taken that
 * lies nearest to where the steps between readings lead.
 */
final class LocalClock {
    private static final long FAR = 86_400;

    private final ZoneRules rules;
    private final long step;
    private final List<LocalDate> twice = new ArrayList<>();
    private long certainFrom = Long.MAX_VALUE;
    private long certainUntil = Long.MIN_VALUE;
    private long certainOffset;
    private long before;
    private boolean isFirst = true;

    /**
     * For readings that follow each other.
     *
     * @param step seconds from one to the next; below 0 where the newest comes first
     */
    LocalClock(ZoneRules rules, long step) {
        this.rules = rules;
        this.step = step;
    }

    /**
     * The instant at which the clock shows that.
     *
     * @param local seconds since 1970-01-01T00:00 on the clock
     */
    long instant(long local) {
        long at = local >= certainFrom && local < certainUntil ? local - certainOffset : nearChange(local);
        before = at;
        isFirst = false;
        return at;
    }

    private long nearChange(long local) {
        LocalDateTime time = LocalDateTime.ofEpochSecond(local, 0, ZoneOffset.UTC);
        ZoneOffsetTransition change = rules.getTransition(time);
        if (change == null) {
            widen(time);
            return local - certainOffset;
        }
        long earlier = local - change.getOffsetBefore().getTotalSeconds();
        return change.isGap()
                ? earlier
                : ofTwo(earlier, local - change.getOffsetAfter().getTotalSeconds(), time);
    }

    private long ofTwo(long earlier, long later, LocalDateTime time) {
        boolean isLater = !isFirst && (Math.abs(before - earlier) > FAR ? step < 0 : isNearer(later, earlier));
        boolean isSecond = step > 0 ? isLater : !isLater && !isFirst;
        if (isSecond && !twice.contains(time.toLocalDate())) {
            twice.add(time.toLocalDate());
        }
        return isLater ? later : earlier;
    }

    private boolean isNearer(long one, long other) {
        long expected = before + step;
        return Math.abs(one - expected) < Math.abs(other - expected);
    }

    /** Finds how long the offset of that time holds. */
    private void widen(LocalDateTime time) {
        ZoneOffset offset = rules.getOffset(time);
        certainOffset = offset.getTotalSeconds();
        certainFrom = end(rules.previousTransition(time.toInstant(offset).plusSeconds(1)), Long.MIN_VALUE, true);
        certainUntil = end(rules.nextTransition(time.toInstant(offset)), Long.MAX_VALUE, false);
    }

    /** The last, or the first, of what the clock shows at a change. */
    private static long end(@Nullable ZoneOffsetTransition change, long none, boolean isLast) {
        if (change == null) {
            return none;
        }
        long one = change.getDateTimeBefore().toEpochSecond(ZoneOffset.UTC);
        long other = change.getDateTimeAfter().toEpochSecond(ZoneOffset.UTC);
        return isLast ? Math.max(one, other) : Math.min(one, other);
    }

    /** The days on which an hour came twice. */
    List<LocalDate> twice() {
        return List.copyOf(twice);
    }
}
