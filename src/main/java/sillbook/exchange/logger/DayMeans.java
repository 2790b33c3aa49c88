// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.time.Instant;
import java.time.LocalDate;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/** The mean of each day's readings, each reading counted alike: for a picture, and for nothing else. */
final class DayMeans {
    private static final long DAY = 86_400;

    private final ZoneRules rules;
    private final Map<Long, Sum> sums = new HashMap<>();
    private long offset;
    private long offsetFrom = Long.MAX_VALUE;
    private long offsetUntil = Long.MIN_VALUE;
    private long begun = Long.MAX_VALUE;
    private Sum ofDay = new Sum();

    private static final class Sum {
        private long sum;
        private long count;
    }

    /** Days from midnight to midnight of this zone. */
    DayMeans(ZoneRules rules) {
        this.rules = rules;
    }

    void add(long at, int milli) {
        if (at < begun || at >= begun + DAY || at < offsetFrom || at >= offsetUntil) {
            turnTo(at);
        }
        ofDay.sum += milli;
        ofDay.count++;
    }

    private void turnTo(long at) {
        if (at < offsetFrom || at >= offsetUntil) {
            findOffset(Instant.ofEpochSecond(at));
        }
        long day = Math.floorDiv(at + offset, DAY);
        begun = day * DAY - offset;
        ofDay = sums.computeIfAbsent(day, one -> new Sum());
    }

    private void findOffset(Instant at) {
        offset = rules.getOffset(at).getTotalSeconds();
        ZoneOffsetTransition next = rules.nextTransition(at);
        ZoneOffsetTransition last = rules.previousTransition(at.plusSeconds(1));
        offsetUntil = next == null ? Long.MAX_VALUE : next.toEpochSecond();
        offsetFrom = last == null ? Long.MIN_VALUE : last.toEpochSecond();
    }

    NavigableMap<LocalDate, Integer> means() {
        NavigableMap<LocalDate, Integer> means = new TreeMap<>();
        sums.forEach((day, of) ->
                means.put(LocalDate.ofEpochDay(day), Math.toIntExact(Math.round((double) of.sum / of.count))));
        return means;
    }
}
