// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.chart.TimeAxis;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.State;

/**
 * Which stretch of time the chart of a place shows.
 *
 * @param panned days by which it was moved by hand from where it opens, later being positive; under the ruler that is the ruler's affair
 * @param asked what the shell was last asked to read for it
 * @param answer what it answered last; what was asked before may still be on its way
 */
public record ChartSpan(Zoom zoom, int panned, Optional<Effect.ReadChart> asked, Optional<Message.ChartRead> answer) {
    static final ChartSpan SEASON = of(Zoom.SEASON, 0);

    private static ChartSpan of(Zoom zoom, int panned) {
        return new ChartSpan(zoom, panned, Optional.empty(), Optional.empty());
    }

    boolean isSeason() {
        return zoom == Zoom.SEASON;
    }

    /** One step nearer, around the same days. */
    ChartSpan nearer() {
        Zoom next = zoom.next();
        return next == Zoom.SEASON ? SEASON : of(next, panned);
    }

    ChartSpan earlier() {
        return of(zoom, panned - zoom.daysAPress());
    }

    ChartSpan later() {
        return of(zoom, panned + zoom.daysAPress());
    }

    ChartSpan unpanned() {
        return of(zoom, 0);
    }

    /** What has to be read to draw it nearer than by days; empty where that is not asked for, and while it is under way. */
    Optional<Effect.ReadChart> toAsk(State state, Id<Place> place) {
        return wanted(state, place).filter(wanted -> !asked.equals(Optional.of(wanted)));
    }

    private Optional<Effect.ReadChart> wanted(State state, Id<Place> place) {
        TimeAxis axis = axis(state, place, state.body().columns());
        return !zoom.isWithinDays() || axis.count() == 0
                ? Optional.empty()
                : Optional.of(new Effect.ReadChart(place, axis.from(0), axis.to(axis.count() - 1), axis.count()));
    }

    ChartSpan asking(Effect.ReadChart effect) {
        return new ChartSpan(zoom, panned, Optional.of(effect), answer);
    }

    ChartSpan answered(Message.ChartRead message) {
        return asked.equals(Optional.of(message.asked()))
                ? new ChartSpan(zoom, panned, asked, Optional.of(message))
                : this;
    }

    /** When the journal changed it is asked anew; meanwhile what was read stays. */
    ChartSpan stale() {
        return new ChartSpan(zoom, panned, Optional.empty(), answer);
    }

    /** What was read for what is to be drawn now; empty until it has come. */
    Optional<Message.ChartRead> near(State state, Id<Place> place) {
        return answer.filter(read -> wanted(state, place).equals(Optional.of(read.asked())));
    }

    TimeAxis axis(State state, Id<Place> place, int columns) {
        return zoom.axis(state, columns, opening(state, place).plusDays(panned));
    }

    /** Opens on today, or, where the season shown was last read before, on that day; so it never opens on nothing. */
    private static LocalDate opening(State state, Id<Place> place) {
        LocalDate shown = lastShown(state);
        return Optional.ofNullable(state.journal().daysRead().at(place).floorKey(shown))
                .orElse(shown);
    }

    /** The last day of the season shown that is not still to come. */
    static LocalDate lastShown(State state) {
        LocalDate today = state.shown().today();
        LocalDate end = state.timescale()
                .season()
                .endExclusive(state.journal().settings().seasonStart())
                .minusDays(1);
        return today.isBefore(end) ? today : end;
    }
}
