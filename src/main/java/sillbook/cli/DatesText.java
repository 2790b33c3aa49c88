// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sillbook.exchange.UsedFigure;
import sillbook.model.Settings;
import sillbook.reckon.dates.Judgement;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Schedule;
import sillbook.reckon.dates.Window;
import sillbook.words.Days;
import sillbook.words.FigureValues;
import sillbook.words.MilestoneWords;

/** The days of a pot as plain lines. */
record DatesText(Settings settings) {

    /** The kind, the days, how the wish stands, the figures, and what was assumed, a fact a line. */
    List<String> lines(DatesReckoned reckoned, List<String> assumed) {
        Schedule schedule = reckoned.schedule();
        List<String> lines = new ArrayList<>(List.of("kind: " + reckoned.kind()));
        for (Milestone milestone : Milestone.values()) {
            schedule.stages()
                    .at(milestone)
                    .ifPresent(window -> lines.add(MilestoneWords.say(milestone) + ": " + said(window)));
        }
        schedule.judgement().ifPresent(judgement -> lines.add(said(judgement)));
        reckoned.figures().stream().filter(figure -> !figure.isAssumed()).forEach(figure -> lines.add(said(figure)));
        assumed.forEach(assumption -> lines.add("assumed: " + assumption));
        return lines;
    }

    /** {@code Sun 1 Nov 2026}, {@code Mon 15 Feb 2027 (8 to 22 Feb)}. */
    private static String said(Window window) {
        String range = window.isExact() ? "" : " (" + Days.fromTo(window.earliest(), window.latest()) + ")";
        return Days.full(window.likely()) + range;
    }

    private static String said(Judgement judgement) {
        String verdict = judgement.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        return "wish: " + Days.full(judgement.wish()) + ", " + verdict;
    }

    private String said(UsedFigure figure) {
        return FigureValues.named(figure.name(), figure.range(), settings) + ", " + figure.origin()
                + (figure.sources().isEmpty() ? "" : ": " + String.join(" ", figure.sources()));
    }
}
