// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal.Course;
import sillbook.plan.PlanNow;
import sillbook.plan.PlannedPot;
import sillbook.reckon.dates.DaySpan;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.plan.PlanNames;

/**
 * A proposed pot by its days: when it comes in, how long it is cold, when it flowers.
 *
 * @param number of it in the plan, from 0
 */
record PlannedRow(State state, PlanNow now, int number) implements Widget {
    private static final int SIGN = 2;
    private static final int POT = 17;
    private static final int POT_COLUMNS = 22;
    private static final int WEEKS_END = 44;
    private static final int FROM = 51;
    private static final int FLOWERS = 66;
    private static final int PLACES = 83;
    private static final int DAYS_IN_WEEK = 7;

    /** Over the columns, in pencil. */
    static void heading(Rect line, Cells cells) {
        int left = line.column();
        cells.put(left + Row.LABEL, line.row(), "bring in", Style.PENCIL);
        cells.put(left + POT, line.row(), "pot", Style.PENCIL);
        cells.put(left + POT + POT_COLUMNS - 1, line.row(), "weeks cold", Style.PENCIL);
        cells.put(left + FROM, line.row(), "cold from", Style.PENCIL);
        cells.put(left + FLOWERS, line.row(), "flowers about", Style.PENCIL);
        cells.put(left + PLACES, line.row(), "cold, then in flower at", Style.PENCIL);
    }

    @Override
    public void render(Rect line, Cells cells) {
        int left = line.column();
        if (!now.troublesOf(number).isEmpty()) {
            cells.put(left + SIGN, line.row(), Sign.LATE, Style.RUST);
        }
        if (!isWithTheOneBefore()) {
            cells.put(left + Row.LABEL, line.row(), Days.column(course().in(), season()), Style.BOLD);
        }
        cells.put(left + POT, line.row(), Columns.fit(name(), POT_COLUMNS), Style.BOLD);
        new Right(line, cells).put(WEEKS_END, weeks(), Style.INK);
        cells.put(left + FROM, line.row(), from(), Style.INK);
        cells.put(left + FLOWERS, line.row(), Days.column(pot().flowers().likely(), season()), Style.INK);
        Rect places = line.withoutLeft(PLACES);
        cells.put(places.column(), places.row(), Columns.fit(places(), places.columns() - 1), Style.INK);
    }

    private DaySpan season() {
        return now.ribbon().days();
    }

    private PlannedPot pot() {
        return now.pots().get(number);
    }

    private Course course() {
        return pot().course();
    }

    private boolean isWithTheOneBefore() {
        return number > 0 && now.pots().get(number - 1).course().in().equals(course().in());
    }

    private String name() {
        PlanNames names = new PlanNames(state.journal(), now.plan());
        String label = pot().proposal().pot().isPresent() ? names.mark(number) + " " : "";
        return label + names.content(number);
    }

    private boolean isCold() {
        return course().potting().isBefore(course().in());
    }

    private String weeks() {
        LocalDate from = course().potting();
        return isCold() ? Long.toString(from.datesUntil(course().in()).count() / DAYS_IN_WEEK) : "-";
    }

    private String from() {
        return isCold() ? Days.column(course().potting(), season()) : "-";
    }

    private String places() {
        return Stream.of(course().cold(), course().room())
                .flatMap(Optional::stream)
                .map(this::place)
                .collect(Collectors.joining(", "));
    }

    private String place(Id<Place> place) {
        return new PotNames(state.journal()).place(place);
    }
}
