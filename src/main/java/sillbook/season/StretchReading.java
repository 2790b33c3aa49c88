// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.cold.HourWorth;
import sillbook.reckon.cold.PublishedCount;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.ColdPart.Basis;

/**
 * What each day of a stretch at one place is worth as cold: by the sum of its readings, else by its lowest and highest, else by the days on
 * which the place is cold.
 */
final class StretchReading {
    /** A day is cold when at least so much of it counts. */
    static final double COLD = 0.5;

    private final ReadDays read;
    private final ColdCalendar calendar;

    /** The first and the last day of the stretch of which anything is known; empty where nothing is. */
    private final Optional<DaySpan> known;

    StretchReading(ReadDays read, ColdCalendar calendar, DaySpan days) {
        this.read = read;
        this.calendar = calendar;
        this.known = read.known(days);
    }

    /** Whether anything was read while it lasted. */
    boolean isRead() {
        return known.isPresent();
    }

    /** Whether a day is cold: so far as it was read, the hours from 0 to 2 C count whole. */
    boolean isCold(LocalDate day) {
        return read.sum(day)
                .map(sum -> sum.published() / sum.known())
                .or(() -> read.span(day).map(span -> middle(span.between(), PublishedCount.HOURS)))
                .map(worth -> worth >= COLD)
                .orElseGet(() -> isTakenForCold(day));
    }

    /** A day of which nothing is known; before the first that is, a place that was still warm then had not turned cold. */
    private boolean isTakenForCold(LocalDate day) {
        boolean isBefore = known.filter(days -> day.isBefore(days.start())).isPresent();
        return calendar.days().contains(day)
                && (!isBefore || known.filter(days -> isCold(days.start())).isPresent());
    }

    /**
     * Hands over the parts of a day.
     *
     * @param isRooted whether the hours from 0 to 2 C count whole
     */
    void tell(LocalDate day, boolean isRooted, Consumer<ColdPart> to) {
        Optional<DayRead> sum = read.sum(day);
        if (sum.isPresent()) {
            double length = read.hours(day);
            to.accept(hours(sum.get(), length, isRooted));
            double open = 1 - sum.get().known() / length;
            if (open > ColdCount.ROUNDING) {
                to.accept(unread(day, open));
            }
        } else {
            to.accept(read.span(day)
                    .map(span -> between(span.between(), isRooted))
                    .orElseGet(() -> unread(day, 1)));
        }
    }

    /** What a day was worth of those that were read. */
    ColdPace pace(DaySpan lately, Predicate<LocalDate> isRooted) {
        List<Double> worths = new ArrayList<>();
        lately.start()
                .datesUntil(lately.endExclusive())
                .filter(read::isKnown)
                .forEach(day -> tell(day, isRooted.test(day), part -> {
                    if (ColdCount.BY_THERMOMETER.contains(part.basis())) {
                        worths.add(part.likely() / part.days());
                    }
                }));
        return ColdPace.of(worths);
    }

    /** @param length of the day, in hours: it counts as one whether the clocks change on it or not */
    private static ColdPart hours(DayRead sum, double length, boolean isRooted) {
        double likely = isRooted ? sum.published() : sum.effective();
        return new ColdPart(
                Basis.READ, sum.known() / length, sum.effective() / length, likely / length, sum.published() / length);
    }

    private static ColdPart between(Band band, boolean isRooted) {
        return new ColdPart(
                Basis.BETWEEN,
                1,
                ColdWeight.USUAL.least(band.low().celsius(), band.high().celsius()),
                middle(band, isRooted ? PublishedCount.HOURS : ColdWeight.USUAL),
                PublishedCount.HOURS.most(band.low().celsius(), band.high().celsius()));
    }

    /** What a day at the middle between lowest and highest is worth; it lies between the least and the most. */
    private static double middle(Band band, HourWorth worth) {
        double middle = (band.low().celsius() + band.high().celsius()) / 2;
        return worth.between(middle, middle);
    }

    private ColdPart unread(LocalDate day, double part) {
        boolean isGap = known.filter(days -> day.isAfter(days.start()) && day.isBefore(days.last()))
                .isPresent();
        double likely = isTakenForCold(day) ? part : 0;
        return isGap
                ? new ColdPart(Basis.UNACCOUNTED, part, 0, likely, likely)
                : new ColdPart(Basis.ASSUMED, part, likely, likely, likely);
    }
}
