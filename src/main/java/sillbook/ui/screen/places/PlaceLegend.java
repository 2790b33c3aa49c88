// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.chart.TimeAxis;
import sillbook.chart.Warmth;
import sillbook.model.Place;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.PlaceClimate.SoFar;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.WarmthChart.Edges;
import sillbook.ui.draw.Widget;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.Temperatures;

/**
 * At the left of a chart: the place, and what the curve comes to.
 *
 * @param season what the season comes to; of a nearer look it is said how warm that stretch was
 */
record PlaceLegend(Place place, ChartSpan span, PlaceTrace trace, Optional<SoFar> season) implements Widget {
    private static final int FACTS = 2;
    private static final int TEXT = 2;
    private static final String NOT_READ = "not read";

    /** A line under the name: a sign, or none, and what is said. */
    private record Fact(Optional<Sign> sign, String text) {
        static Fact of(Sign sign, String text) {
            return new Fact(Optional.of(sign), text);
        }

        static Fact of(String text) {
            return new Fact(Optional.empty(), text);
        }
    }

    @Override
    public void render(Rect area, Cells cells) {
        Cells part = cells.within(area);
        int after = part.put(area.column(), area.row(), Columns.fit(place.name(), area.columns()), Style.BOLD);
        part.put(after, area.row(), ", " + span.zoom().words(), Style.INK);
        List<Fact> facts = new ArrayList<>(
                span.isSeason() ? season.map(this::ofSeason).orElse(List.of(Fact.of(NOT_READ))) : ofStretch());
        if (!trace.foretold().isEmpty()) {
            facts.add(Fact.of("dotted: foretold"));
        }
        int first = area.rows() >= facts.size() + FACTS ? FACTS : 1;
        for (int i = 0; i < facts.size(); i++) {
            Fact fact = facts.get(i);
            Rect line = area.line(first + i);
            fact.sign().ifPresent(sign -> part.put(line.column(), line.row(), sign, PlaceChart.style(sign)));
            int column = line.column() + (fact.sign().isPresent() ? TEXT : 0);
            part.put(column, line.row(), fact.text(), Style.INK);
        }
    }

    private List<Fact> ofSeason(SoFar soFar) {
        List<Fact> facts = new ArrayList<>();
        trace.band()
                .ifPresent(band -> facts.add(Fact.of(Sign.ABOVE_BAND, days(soFar.daysOver(), "over", band.high()))));
        under(soFar, facts);
        facts.add(Fact.of("read " + Counts.percent(soFar.share())));
        gaps(soFar.gaps()).map(Fact::of).ifPresent(facts::add);
        facts.add(Fact.of("since " + Days.date(soFar.since())));
        return facts;
    }

    /** Frost is said of every cold place, what lies under the band only where it came to that. */
    private void under(SoFar soFar, List<Fact> facts) {
        if (trace.servesCold() || soFar.daysUnderZero() > 0) {
            facts.add(Fact.of(Sign.BELOW_BAND, days(soFar.daysUnderZero(), "under", trace.freezing())));
        }
        Optional<Edges> band = trace.band().filter(edges -> edges.low() > trace.freezing());
        if (!trace.servesCold() || soFar.daysUnder() > 0) {
            band.ifPresent(edges -> facts.add(Fact.of(Sign.BELOW_BAND, days(soFar.daysUnder(), "under", edges.low()))));
        }
    }

    /** {@code 51 d over 9}, {@code none under 0}. */
    private static String days(int days, String side, double edge) {
        return (days == 0 ? "none" : days + " d") + " " + side + " " + Temperatures.figure(edge);
    }

    /** {@code gap 30 Nov-6 Dec}, {@code 3 gaps, 12 days}. */
    private static Optional<String> gaps(List<DaySpan> gaps) {
        if (gaps.size() == 1) {
            DaySpan gap = gaps.get(0);
            return Optional.of(
                    "gap " + Days.span(gap.start(), gap.endExclusive().minusDays(1)));
        }
        long days = gaps.stream().mapToLong(DaySpan::days).sum();
        return gaps.isEmpty() ? Optional.empty() : Optional.of(gaps.size() + " gaps, " + Counts.of(days, "day"));
    }

    /** {@code 6-13 Jan}. */
    private String stretch() {
        TimeAxis axis = trace.axis();
        LocalDate first = LocalDate.ofInstant(axis.from(0), axis.zone());
        LocalDate last =
                LocalDate.ofInstant(axis.to(axis.count() - 1), axis.zone()).minusDays(1);
        return Days.span(first, last);
    }

    private List<Fact> ofStretch() {
        String stretch = stretch();
        List<Warmth> known = trace.extremes().known().toList();
        if (known.isEmpty()) {
            return List.of(Fact.of(stretch), Fact.of(NOT_READ));
        }
        double lowest = known.stream().mapToDouble(Warmth::lowest).min().orElseThrow();
        double highest = known.stream().mapToDouble(Warmth::highest).max().orElseThrow();
        return List.of(
                Fact.of(stretch),
                Fact.of("highest " + Temperatures.figure(highest)),
                Fact.of("lowest  " + Temperatures.figure(lowest)));
    }
}
