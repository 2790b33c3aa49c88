// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import sillbook.reckon.cold.ColdHad;
import sillbook.reckon.cold.DayTrace;
import sillbook.reckon.cold.HourWorth;
import sillbook.reckon.cold.Trace;

/** Thermograph of a file: moment by moment, or day by day. */
sealed interface Thermograph {
    /** What of them lies between two ends as they were given, both in it; each may be left open. */
    Thermograph between(Optional<String> from, Optional<String> to);

    ColdHad cold(HourWorth worth);

    /** The day on which so many effective hours were reached; empty where they were not. */
    Optional<LocalDate> reached(HourWorth worth, double hours);

    /** Readings with a moment each; where no zone was printed, as if it were that of Greenwich. */
    record OfMoments(Trace trace) implements Thermograph {
        @Override
        public Thermograph between(Optional<String> from, Optional<String> to) {
            Instant first = from.map(text -> Moments.given(text).first()).orElse(Instant.MIN);
            Instant last = to.map(text -> Moments.given(text).last()).orElse(Instant.MAX);
            return new OfMoments(trace.between(first, last));
        }

        @Override
        public ColdHad cold(HourWorth worth) {
            return trace.cold(worth);
        }

        @Override
        public Optional<LocalDate> reached(HourWorth worth, double hours) {
            return trace.reached(worth, hours).map(at -> LocalDate.ofInstant(at, ZoneOffset.UTC));
        }
    }

    /** Days with their lowest and highest. */
    record OfDays(DayTrace trace) implements Thermograph {
        @Override
        public Thermograph between(Optional<String> from, Optional<String> to) {
            LocalDate first = from.map(Moments::givenDay).orElse(LocalDate.MIN);
            LocalDate last = to.map(Moments::givenDay).orElse(LocalDate.MAX);
            return new OfDays(trace.between(first, last));
        }

        @Override
        public ColdHad cold(HourWorth worth) {
            return trace.cold(worth);
        }

        @Override
        public Optional<LocalDate> reached(HourWorth worth, double hours) {
            return trace.reached(worth, hours);
        }
    }
}
