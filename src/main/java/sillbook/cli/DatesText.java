// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sillbook.exchange.UsedFigure;
import sillbook.model.Kind;
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

    List<String> lines(Kind kind, Schedule schedule, List<UsedFigure> figures) {
        List<String> lines = new ArrayList<>(List.of("kind: " + kind));
        for (Milestone milestone : Milestone.values()) {
            schedule.stages()
                    .at(milestone)
                    .ifPresent(window -> lines.add(MilestoneWords.say(milestone) + ": " + said(window)));
        }
        schedule.judgement().ifPresent(judgement -> lines.add(said(judgement)));
        figures.forEach(figure -> lines.add(said(figure)));
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
                + figure.source().map(source -> ": " + source).orElse("");
    }
}
