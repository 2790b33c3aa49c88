// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import sillbook.exchange.ColdJson;
import sillbook.reckon.cold.ColdHad;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.cold.DayTrace;
import sillbook.reckon.cold.HourWorth;
import sillbook.reckon.cold.SpanTrace;
import sillbook.reckon.cold.Trace;
import sillbook.words.ColdFigures;
import sillbook.words.Provisos;

/** Temperatures of a file: moment by moment, day by day, or span by span. */
sealed interface Thermograph {
    /** What of them lies between two ends as they were given, both in it; each may be left open. */
    Thermograph between(Optional<String> from, Optional<String> to);

    boolean isEmpty();

    /** Hours between the first and the last of them of which nothing is known. */
    double unaccounted();

    /**
     * How many degree-days above a base each day adds.
     *
     * @param base in C
     * @throws CouldNot when it is not known by the day
     */
    NavigableMap<LocalDate, Double> degreeDays(double base);

    /**
     * The cold of them as JSON.
     *
     * @param need in weeks
     */
    String document(HourWorth worth, double need, Provisos provisos);

    /** The same in plain lines. */
    List<String> lines(HourWorth worth, double need);

    private static Instant start(Optional<String> from, ZoneId zone) {
        return from.map(text -> Moments.given(text, zone).first()).orElse(Instant.MIN);
    }

    private static Instant end(Optional<String> to, ZoneId zone) {
        return to.map(text -> Moments.given(text, zone).last()).orElse(Instant.MAX);
    }

    /** Those whose cold is one figure. */
    sealed interface Known extends Thermograph {
        ColdHad cold(HourWorth worth);

        @Override
        default double unaccounted() {
            return cold(ColdWeight.USUAL).unaccounted();
        }

        /** The day on which so many effective hours were reached; empty where they were not. */
        Optional<LocalDate> reached(HourWorth worth, double hours);

        /** Of its days. */
        ZoneId zone();

        @Override
        default String document(HourWorth worth, double need, Provisos provisos) {
            return ColdJson.write(cold(worth), need, reached(worth, need * ColdHad.WEEK), provisos);
        }

        @Override
        default List<String> lines(HourWorth worth, double need) {
            return ColdFigures.lines(cold(worth), need, reached(worth, need * ColdHad.WEEK), zone());
        }
    }

    /** Readings with a moment each. */
    record OfMoments(Trace trace, ZoneId zone) implements Known {
        @Override
        public Thermograph between(Optional<String> from, Optional<String> to) {
            return new OfMoments(trace.between(start(from, zone), end(to, zone)), zone);
        }

        @Override
        public boolean isEmpty() {
            return trace.readings().isEmpty();
        }

        @Override
        public ColdHad cold(HourWorth worth) {
            return trace.cold(worth);
        }

        @Override
        public Optional<LocalDate> reached(HourWorth worth, double hours) {
            return trace.reached(worth, hours).map(at -> LocalDate.ofInstant(at, zone));
        }

        @Override
        public NavigableMap<LocalDate, Double> degreeDays(double base) {
            return trace.degreeDays(base, zone);
        }
    }

    /** Days with their lowest and highest. */
    record OfDays(DayTrace trace) implements Known {
        @Override
        public Thermograph between(Optional<String> from, Optional<String> to) {
            LocalDate first = from.map(Moments::givenDay).orElse(LocalDate.MIN);
            LocalDate last = to.map(Moments::givenDay).orElse(LocalDate.MAX);
            return new OfDays(trace.between(first, last));
        }

        @Override
        public boolean isEmpty() {
            return trace.days().isEmpty();
        }

        @Override
        public ColdHad cold(HourWorth worth) {
            return trace.cold(worth);
        }

        @Override
        public Optional<LocalDate> reached(HourWorth worth, double hours) {
            return trace.reached(worth, hours);
        }

        @Override
        public ZoneId zone() {
            return ZoneOffset.UTC;
        }

        @Override
        public NavigableMap<LocalDate, Double> degreeDays(double base) {
            return trace.degreeDays(base);
        }
    }

    /** Spans with their lowest and highest, of which the cold is only bounded. */
    record OfSpans(SpanTrace trace) implements Thermograph {
        @Override
        public Thermograph between(Optional<String> from, Optional<String> to) {
            return new OfSpans(trace.between(start(from, ZoneOffset.UTC), end(to, ZoneOffset.UTC)));
        }

        @Override
        public boolean isEmpty() {
            return trace.spans().isEmpty();
        }

        @Override
        public double unaccounted() {
            return trace.cold(ColdWeight.USUAL).unaccounted();
        }

        @Override
        public NavigableMap<LocalDate, Double> degreeDays(double base) {
            throw new CouldNot(
                    "It has spans of several days, and degree-days are added up by the day. Give it days with"
                            + " their lowest and highest, or the file of a thermometer.");
        }

        @Override
        public String document(HourWorth worth, double need, Provisos provisos) {
            return ColdJson.spans(trace.cold(worth), need, first(worth, need), certain(worth, need), provisos);
        }

        @Override
        public List<String> lines(HourWorth worth, double need) {
            return ColdFigures.spans(trace.cold(worth), need, first(worth, need), certain(worth, need));
        }

        private static LocalDate day(Instant at) {
            return LocalDate.ofInstant(at, ZoneOffset.UTC);
        }

        private Optional<LocalDate> first(HourWorth worth, double need) {
            return trace.reachedFirst(worth, need * ColdHad.WEEK).map(OfSpans::day);
        }

        private Optional<LocalDate> certain(HourWorth worth, double need) {
            return trace.reachedForCertain(worth, need * ColdHad.WEEK).map(OfSpans::day);
        }
    }
}
