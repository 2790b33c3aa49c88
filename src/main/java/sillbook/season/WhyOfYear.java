// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Source;
import sillbook.model.JobKind;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;

/**
 * When a job of a plant that lives on can be done.
 *
 * @param from the day it is counted from: of the last feeding, of the rest's beginning, of the waking; else the season's first
 * @param after days from then on
 */
public record WhyOfYear(JobKind job, LocalDate from, DayCount after, List<FigureInForce> figures, Window result)
        implements Why<Window> {
    public WhyOfYear {
        figures = List.copyOf(figures);
    }

    static WhyOfYear of(JobKind job, LocalDate from, DayCount after, List<FigureInForce> figures) {
        return new WhyOfYear(job, from, after, figures, Window.on(from).plus(after));
    }

    @Override
    public <T> T fold(Cases<T> cases) {
        return cases.ofYear(this);
    }

    @Override
    public Window recomputed() {
        return Window.on(from).plus(after);
    }

    @Override
    public List<String> ruleSources() {
        return job == JobKind.REPOT ? List.of(Source.COMMON_PRACTICE) : List.of("isu-logan", "isu-2020");
    }

    @Override
    public Set<Lever> levers() {
        return figures.isEmpty() ? EnumSet.of(Lever.A_DAY) : EnumSet.of(Lever.A_DAY, Lever.OWN_FIGURE);
    }
}
