// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Subject;
import sillbook.season.Today;
import sillbook.text.Columns;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Clock24;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;
import sillbook.words.Days;
import sillbook.words.Entries;
import sillbook.words.PotNames;

/** What a tall window has room for besides: the weeks after the next two, and what was done today. */
record LaterRows(State state) {
    private static final int SPAN_END = 13;
    private static final int WEEK = 15;
    private static final int TIME = 4;
    private static final int WHO = 11;

    /** The sections that have lines. */
    List<List<Row>> rows() {
        Today today = state.almanac().today();
        List<Row> weeks = today.afterThat().stream()
                .filter(week -> !week.coming().isEmpty())
                .map(this::week)
                .toList();
        List<Row> done = today.done().stream().map(this::done).toList();
        List<List<Row>> sections = new ArrayList<>();
        section("After that", weeks, sections);
        section("Done today", done, sections);
        return sections;
    }

    private static void section(String heading, List<Row> rows, List<List<Row>> sections) {
        if (!rows.isEmpty()) {
            List<Row> section = new ArrayList<>(List.of(Row.heading(heading)));
            section.addAll(rows);
            sections.add(section);
        }
    }

    private Row week(Today.Week week) {
        String span = Days.span(week.days().start(), week.days().endExclusive().minusDays(1));
        String says = week.coming().stream().map(this::coming).collect(Collectors.joining("; "));
        return Row.of((area, cells) -> {
            cells.put(area.column(), area.row(), Columns.right(span, SPAN_END), Style.INK);
            cells.put(area.column() + WEEK, area.row(), fit(says, area.columns() - WEEK), Style.INK);
        });
    }

    private static String fit(String text, int columns) {
        return Columns.fit(text, columns - 1);
    }

    private String coming(Today.Coming coming) {
        String labels = new PotNames(state.journal()).labels(coming.pots());
        return switch (coming.sort()) {
            case POT_UP -> labels + " pot up";
            case READY -> labels + " ready";
            case USE_BY -> labels + " use by";
            case TO_WARM_ROOM -> labels + " to warm room";
            case FIRST_FLOWER -> "bloom: " + labels;
            case PAST_BLOOM -> "past bloom: " + labels;
        };
    }

    private Row done(Today.Done done) {
        ZoneId zone = state.journal().settings().zone();
        LocalTime at = LocalTime.ofInstant(done.writtenAt(), zone);
        String says = new Entries(state.journal()).say(done.what());
        Widget line = (area, cells) -> {
            cells.put(area.column() + TIME, area.row(), Clock24.say(at), Style.INK);
            cells.put(area.column() + WHO, area.row(), fit(who(done) + "  " + says, area.columns() - WHO), Style.INK);
        };
        return Row.of(line);
    }

    private String who(Today.Done done) {
        List<Id<Pot>> pots = done.subjects().stream()
                .flatMap(subject -> subject.asPot().stream())
                .toList();
        return pots.isEmpty() ? place(done.subjects().get(0)) : new PotNames(state.journal()).labels(pots);
    }

    private String place(Subject subject) {
        return subject instanceof Subject.OfPlace of ? new PotNames(state.journal()).place(of.place()) : "";
    }
}
