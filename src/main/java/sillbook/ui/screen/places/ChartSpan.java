// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.chart.TimeAxis;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.ui.screen.State;

/**
 * Which stretch of time the chart of a place shows.
 *
 * @param panned days by which it was moved by hand from where it opens, later being positive; under the ruler that is the ruler's affair
 */
public record ChartSpan(Zoom zoom, int panned) {
    static final ChartSpan SEASON = new ChartSpan(Zoom.SEASON, 0);

    boolean isSeason() {
        return zoom == Zoom.SEASON;
    }

    /** One step nearer, around the same days. */
    ChartSpan nearer() {
        Zoom next = zoom.next();
        return next == Zoom.SEASON ? SEASON : new ChartSpan(next, panned);
    }

    ChartSpan earlier() {
        return new ChartSpan(zoom, panned - zoom.daysAPress());
    }

    ChartSpan later() {
        return new ChartSpan(zoom, panned + zoom.daysAPress());
    }

    ChartSpan unpanned() {
        return new ChartSpan(zoom, 0);
    }

    TimeAxis axis(State state, Id<Place> place, int columns) {
        return zoom.axis(state, columns, opening(state, place).plusDays(panned));
    }

    /** Opens on today, or, where the season shown was last read before, on that day; so it never opens on nothing. */
    private static LocalDate opening(State state, Id<Place> place) {
        LocalDate today = state.shown().today();
        LocalDate end = state.timescale()
                .season()
                .endExclusive(state.journal().settings().seasonStart())
                .minusDays(1);
        LocalDate shown = today.isBefore(end) ? today : end;
        NavigableMap<LocalDate, DayRead> days = state.journal().daysRead().at(place);
        Optional<LocalDate> lastRead = Optional.ofNullable(days.floorKey(shown));
        return Stream.concat(Stream.of(shown), lastRead.stream())
                .min(LocalDate::compareTo)
                .orElse(shown);
    }
}
