// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;

/**
 * How warm a place has been up to a day, by what was read there. Of a place that was never read only the band is known.
 *
 * @param band the temperatures it should have: what it usually has, by the grower; else, where it serves the cold, what counts whole
 * @param now the newest reading; empty where only lowest and highest were read
 * @param lastDay the last day of which some hours are known; a lone reading tells of none
 * @param week the lowest and highest of the seven days up to this one, and of spans read in them
 * @param strayed where it is out of its band, as last known
 * @param drift where it is in its band and on its way out
 * @param season empty where nothing was read this season
 * @param trial the days on end that were read up to now; empty where the last of them is not yesterday or today
 */
public record PlaceClimate(
        Optional<Band> band,
        Optional<LastRead> now,
        Optional<LocalDate> lastDay,
        Optional<Band> week,
        Optional<Strayed> strayed,
        Optional<Drift> drift,
        Optional<SoFar> season,
        Optional<Trial> trial) {
    /** Hours of a day that have to be known for it to be judged by (judgement). */
    public static final int MOST_OF_A_DAY = 20;

    static boolean isMostlyKnown(DayRead day) {
        return day.known() >= MOST_OF_A_DAY;
    }

    /** On which side of its band a place is. */
    public enum Side {
        OVER,
        UNDER
    }

    /**
     * Days on end on which a place was out of its band: by the mean of a day, or by the whole of a span.
     *
     * @param since the first of them
     * @param hours known of them
     * @param mean of those hours; empty where some are known by lowest and highest only
     */
    public record Strayed(Side side, LocalDate since, double hours, Optional<Temperature> mean) {}

    /**
     * A place that warms or cools so that it will be out of its band within a week, by the line through the last days' means.
     *
     * @param perDay degrees C a day, above 0 where it warms
     * @param on the day it is out of its band at that pace
     */
    public record Drift(Side side, double perDay, LocalDate on) {}

    /**
     * The season up to a day, from the first day anything is known of.
     *
     * @param daysOver days whose mean, or whose whole span, lay above the band
     * @param daysUnder days whose mean, or whose whole span, lay under the band
     * @param daysUnderZero days on which it went below 0 C; at least, where only lowest and highest of some are known
     * @param gaps days of which nothing is known, between days of which something is
     * @param share of all hours since then, those that are known; 0 to 1
     */
    public record SoFar(
            LocalDate since, int daysOver, int daysUnder, int daysUnderZero, List<DaySpan> gaps, double share) {
        public SoFar {
            gaps = List.copyOf(gaps);
        }
    }

    /**
     * Days on end on which a place was read, as before any pot is put there.
     *
     * @param since the first of them
     * @param days how many of them count: those that are known for the most part, and those with frost
     * @param inBand those of the last seven that count that stayed in the band, without frost
     */
    public record Trial(LocalDate since, int days, int inBand) {
        /** So many days make a trial (common practice). */
        public static final int DAYS = 7;

        public boolean isOver() {
            return days >= DAYS;
        }

        public boolean isPassed() {
            return inBand == DAYS;
        }
    }

    /**
     * The last day on which anything was read, or that a lowest and highest holds for.
     *
     * @param zone whose midnights part days
     */
    public Optional<LocalDate> lastReadOn(ZoneId zone) {
        Optional<LocalDate> newest = now.map(last -> LocalDate.ofInstant(last.at(), zone));
        return Stream.concat(newest.stream(), lastDay.stream()).max(Comparator.naturalOrder());
    }

    /** Whether anything was ever read there. */
    public boolean isRead() {
        return lastDay.isPresent() || now.isPresent();
    }

    public static PlaceClimate of(Journal journal, Id<Place> place, LocalDate today) {
        return new ClimateReading(journal, journal.places().get(place), today).read();
    }
}
