// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.season.Job;
import sillbook.season.PlaceNow;
import sillbook.season.Today;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.PotNames;

/** What a wide window shows beside the list: what blooms and will, how full the places are, the days of this week. */
record TodayMargin(State state) implements Widget {
    static final int COLUMN = 84;
    static final int COLUMNS = 35;
    private static final int RIGHT = COLUMNS;
    private static final int NAME = 2;
    private static final int LIKELY = 23;
    private static final int DAY = 11;
    private static final int MOST_OPENING = 6;
    private static final int DAYS = 7;

    static boolean fits(Size body) {
        return body.columns() >= COLUMN + COLUMNS + 1;
    }

    @Override
    public void render(Rect area, Cells cells) {
        List<Widget> lines = new ArrayList<>();
        Stream.of(inBloom(), opening(), places(), thisWeek())
                .filter(section -> section.size() > 1)
                .forEach(section -> {
                    if (!lines.isEmpty()) {
                        lines.add((line, on) -> {});
                    }
                    lines.addAll(section);
                });
        for (int i = 0; i < Math.min(lines.size(), area.rows()); i++) {
            lines.get(i).render(area.line(i), cells);
        }
    }

    private Today today() {
        return state.almanac().today();
    }

    private static Widget heading(String text, String right) {
        return (line, cells) -> {
            cells.put(line.column(), line.row(), text, Style.BOLD);
            int left = line.column() + COLUMNS / 2;
            cells.put(left, line.row(), Columns.right(right, RIGHT - COLUMNS / 2), Style.PENCIL);
        };
    }

    private Widget flower(Sign sign, Style style, List<Id<Pot>> pots, String right) {
        PotNames names = new PotNames(state.journal());
        return (line, cells) -> {
            cells.put(line.column(), line.row(), sign, style);
            int after = cells.put(line.column() + NAME, line.row(), names.labels(pots), Style.BOLD) + 1;
            int end = line.column() + LIKELY - 1;
            cells.put(after, line.row(), Columns.fit(names.name(pots.get(0)), end - after), Style.INK);
            cells.put(line.column() + LIKELY, line.row(), Columns.fit(right, RIGHT - LIKELY), Style.INK);
        };
    }

    private List<Widget> inBloom() {
        List<Widget> lines = new ArrayList<>(List.of(heading("In bloom", "")));
        for (Today.Blooming blooming : today().inBloom()) {
            String day = "day " + blooming.dayOfBloom()
                    + blooming.outOf().map(days -> " of " + days).orElse("");
            lines.add(flower(Sign.BLOOM, Style.of(Role.PETAL).withBold(), blooming.pots(), day));
        }
        return lines;
    }

    private List<Widget> opening() {
        List<Widget> lines = new ArrayList<>(List.of(heading("Opening next", "likely, window")));
        today().opening().stream().limit(MOST_OPENING).forEach(opening -> {
            var window = opening.firstFlower();
            String span = Days.span(window.earliest(), window.latest());
            String day = Columns.right(Days.date(window.likely()), 6) + " ";
            lines.add(flower(Sign.BLOOM_FORETOLD, Style.of(Role.PETAL), opening.pots(), day + span));
        });
        return lines;
    }

    private List<Widget> places() {
        List<Widget> lines = new ArrayList<>(List.of(heading("Places", "pots")));
        for (PlaceNow place : state.almanac().places()) {
            lines.add((line, cells) -> drawPlace(place, line, cells));
        }
        return lines;
    }

    private void drawPlace(PlaceNow place, Rect line, Cells cells) {
        today().places().stream()
                .filter(attention -> attention.place().equals(place.place().id()))
                .findFirst()
                .map(AttentionSign::of)
                .ifPresent(sign -> cells.put(line.column(), line.row(), sign, AttentionSign.style(sign)));
        int room = RIGHT - LIKELY;
        String pots = place.pots().size()
                + place.place().room().map(all -> " of " + all).orElse("");
        String name = Columns.fit(place.place().name(), LIKELY - NAME - 1);
        cells.put(line.column() + NAME, line.row(), name, Style.INK);
        cells.put(line.column() + LIKELY, line.row(), Columns.right(pots, room), Style.INK);
    }

    private List<Widget> thisWeek() {
        List<Widget> lines = new ArrayList<>(List.of(heading("This week", "")));
        for (int i = 0; i < DAYS; i++) {
            LocalDate day = today().day().plusDays(i);
            String date = Columns.left(Days.column(day), DAY);
            String says = i == 0 ? dueToday() : dueOn(day);
            lines.add((line, cells) ->
                    cells.put(line.column() + NAME, line.row(), Columns.fit(date + says, RIGHT - NAME), Style.INK));
        }
        return lines;
    }

    /** {@code 1 late, 2 due, 3 checks}. */
    private String dueToday() {
        List<String> parts = new ArrayList<>();
        count(today().late().size(), "late").ifPresent(parts::add);
        count(today().due().size(), "due").ifPresent(parts::add);
        int checks = today().checks().size() + (today().dailyCare().isPresent() ? 1 : 0);
        if (checks > 0) {
            parts.add(Counts.of(checks, "check"));
        }
        return parts.isEmpty() ? "-" : String.join(", ", parts);
    }

    private static Optional<String> count(int some, String word) {
        return some == 0 ? Optional.empty() : Optional.of(some + " " + word);
    }

    private String dueOn(LocalDate day) {
        List<Id<Pot>> pots = today().soon().stream()
                .filter(job -> job.on().equals(day))
                .map(Job::pots)
                .flatMap(List::stream)
                .toList();
        return pots.isEmpty() ? "-" : new PotNames(state.journal()).labels(pots);
    }
}
