// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Consumer;
import sillbook.model.ChartColumn;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.reckon.cold.ColdTally;
import sillbook.season.DayTally;
import sillbook.store.DaySums;

/** The sums of days and of columns that a store keeps and gives, worked out as the seasons are. */
public final class DayReckoning implements DaySums {
    private static final double MILLI = 1000;

    @Override
    public Tally days(Id<Place> place, Basis basis, Consumer<DayRead> taking) {
        return tally(at -> DayOf.around(at, basis.zone()), basis, sum -> taking.accept(dayRead(place, sum)));
    }

    @Override
    public Tally columns(Basis basis, Instant from, Instant toExclusive, int columns, Consumer<ChartColumn> taking) {
        long start = from.getEpochSecond();
        long length = toExclusive.getEpochSecond() - start;
        return tally(at -> ColumnOf.around(at, start, length, columns), basis, sum -> {
            if (sum.span().number() >= 0 && sum.span().number() < columns) {
                taking.accept(column(sum));
            }
        });
    }

    private static <S extends DayTally.Span> Tally tally(
            DayTally.Spans<S> spans, Basis basis, Consumer<DayTally.Sum<S>> taking) {
        DayTally<S> tally = new DayTally<>(spans, basis.bridges(), basis.correction(), taking);
        return new Tally() {
            @Override
            public void read(long at, int milli) {
                tally.read(at, milli);
            }

            @Override
            public void end() {
                tally.end();
            }
        };
    }

    /** A day where the journal is kept; 23 or 25 hours long when the clocks change. */
    private record DayOf(LocalDate day, long from, long toExclusive) implements DayTally.Span {
        static DayOf around(long at, ZoneId zone) {
            LocalDate day = LocalDate.ofInstant(Instant.ofEpochSecond(at), zone);
            return new DayOf(day, midnight(day, zone), midnight(day.plusDays(1), zone));
        }

        private static long midnight(LocalDate day, ZoneId zone) {
            return day.atStartOfDay(zone).toEpochSecond();
        }
    }

    /** A column of a chart; those before and after the chart are numbered on. */
    private record ColumnOf(long number, long from, long toExclusive) implements DayTally.Span {
        static ColumnOf around(long at, long start, long length, int columns) {
            long number = Math.floorDiv((at - start) * columns, length);
            return new ColumnOf(number, edge(number, start, length, columns), edge(number + 1, start, length, columns));
        }

        /** The first second that belongs to a column. */
        private static long edge(long number, long start, long length, int columns) {
            return start - Math.floorDiv(-number * length, columns);
        }
    }

    private static DayRead dayRead(Id<Place> place, DayTally.Sum<DayOf> sum) {
        ColdTally tally = sum.tally();
        return new DayRead(
                place,
                sum.span().day(),
                sum.readings(),
                tally.hours(),
                tally.effective(),
                tally.published(),
                tally.freezing(),
                tally.warm(),
                milli(tally.mean()),
                milli(tally.lowest()),
                milli(tally.highest()));
    }

    private static ChartColumn column(DayTally.Sum<ColumnOf> sum) {
        ColdTally tally = sum.tally();
        return new ChartColumn(
                (int) sum.span().number(), milli(tally.lowest()), milli(tally.mean()), milli(tally.highest()));
    }

    private static int milli(double celsius) {
        return Math.toIntExact(Math.round(celsius * MILLI));
    }
}
