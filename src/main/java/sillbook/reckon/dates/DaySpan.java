// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Days in a row, from the first up to, but not with, the last named; so that one span ends where the next begins.
 *
 * @param endExclusive the day after the last; the same as the start for a span without a day
 */
public record DaySpan(LocalDate start, LocalDate endExclusive) {
    public DaySpan {
        if (endExclusive.isBefore(start)) {
            throw new IllegalArgumentException("a span that ends before it starts: " + start + " to " + endExclusive);
        }
    }

    public static DaySpan of(LocalDate start, LocalDate endExclusive) {
        return new DaySpan(start, endExclusive);
    }

    /** The span a person means by "from the 2nd to the 5th", both days in it. */
    public static DaySpan ofInclusive(LocalDate start, LocalDate endInclusive) {
        return new DaySpan(start, endInclusive.plusDays(1));
    }

    /** The days that are in any of them, as spans in order that do not touch. */
    public static List<DaySpan> joined(Collection<DaySpan> spans) {
        List<DaySpan> joined = new ArrayList<>();
        spans.stream().sorted(Comparator.comparing(DaySpan::start)).forEach(span -> {
            int last = joined.size() - 1;
            if (last >= 0 && !span.start.isAfter(joined.get(last).endExclusive)) {
                joined.set(last, joined.get(last).to(span.endExclusive));
            } else {
                joined.add(span);
            }
        });
        return joined;
    }

    /** The same, going on to that day at least. */
    private DaySpan to(LocalDate leastEndExclusive) {
        return leastEndExclusive.isAfter(endExclusive) ? new DaySpan(start, leastEndExclusive) : this;
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(start) && day.isBefore(endExclusive);
    }

    /** The last day in it; of a span without a day, the day before its start. */
    public LocalDate last() {
        return endExclusive.minusDays(1);
    }

    public boolean isEmpty() {
        return start.equals(endExclusive);
    }

    /** How many days it has. */
    public long days() {
        return ChronoUnit.DAYS.between(start, endExclusive);
    }

    /** The days that are in both; empty when there is none. */
    public Optional<DaySpan> intersection(DaySpan other) {
        LocalDate first = start.isAfter(other.start) ? start : other.start;
        LocalDate end = endExclusive.isBefore(other.endExclusive) ? endExclusive : other.endExclusive;
        return first.isBefore(end) ? Optional.of(new DaySpan(first, end)) : Optional.empty();
    }
}
