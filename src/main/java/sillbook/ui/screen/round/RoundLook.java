// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.change.Hand;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Pot.Way;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.Job;
import sillbook.season.PlaceNow;
import sillbook.season.PotNow;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.DryBulbAside;
import sillbook.ui.screen.pot.PotAside;
import sillbook.words.CautionWords;
import sillbook.words.Days;
import sillbook.words.PotWords;
import sillbook.words.RoundWords;

/** How a round is drawn: the pots, the keys that mark them, and the same as a line. */
record RoundLook(RoundPage page, State state, Size body) {
    /** The title, and what the columns are. */
    private static final int HEAD_ROWS = 2;

    private static final int FEWEST_LISTED = 3;
    private static final String CAUTION = "▴ ";
    private static final int INDENT = 4;
    private static final int TITLE = 8;
    private static final int LAST = 52;
    private static final String SAME = "the same as a line:";
    private static final int LINE = INDENT + 21;
    private static final List<String> HOW = List.of(
            "Enter closes the round: all well, but for what is marked. One key marks,",
            "the same key unmarks. Space opens a batch into its pots.");
    private static final List<String> LEGEND_OF_BULBS =
            List.of("S soft           M mould   I mice   F frost   T trouble, note");
    private static final int LEGEND_ROWS = 2;
    private static final int FEWEST_BELOW = 1 + LEGEND_ROWS + 1 + 1;
    private static final int MOST_BELOW = FEWEST_BELOW + 1 + 2;

    Look look() {
        Rows rows = page.rows(state);
        ListPane pane = new ListPane(rows, page.cursor());
        Look look = Look.body((area, cells) -> render(pane, area, cells))
                .withPlace(place(pane))
                .withAside(aside())
                .withFoot(
                        Action.CLOSE_ROUND,
                        Action.MARK_DRY,
                        Action.MARK_ROOTS,
                        Action.AS_ABOVE,
                        Action.JOT,
                        Action.BACK,
                        Action.MARK_MOULD,
                        Action.OPEN_BATCH);
        return pane.point(listRows())
                .map(at -> look.withCursor(new Point(at.column(), at.row() + headRows())))
                .orElse(look);
    }

    private int lines() {
        return page.rows(state).scrolled().size();
    }

    /** The list has the lines that the keys and the line beneath it leave. */
    int listRows() {
        return Math.max(1, Math.min(lines(), body.rows() - headRows() - FEWEST_BELOW));
    }

    private int headRows() {
        return HEAD_ROWS + cautions().size();
    }

    /** What to beware of at the place, as long as a few lines are left for what stands there; else how much more its card says. */
    private List<String> cautions() {
        CautionWords words =
                new CautionWords(state.kit().handbook(), state.journal().settings());
        List<String> all = page.whose().now(state).map(PlaceNow::place).stream()
                .flatMap(place -> words.of(place).stream())
                .flatMap(this::lines)
                .toList();
        int room = Math.max(1, body.rows() - HEAD_ROWS - FEWEST_BELOW - FEWEST_LISTED);
        return all.size() <= room
                ? all
                : Stream.concat(
                                all.stream().limit(room - 1L),
                                Stream.of(CAUTION + "more of this on the card of the place"))
                        .toList();
    }

    /** The sign before the first line, the others beneath its words. */
    private Stream<String> lines(String caution) {
        List<String> wrapped = Columns.wrap(caution, body.columns() - INDENT - Width.of(CAUTION) - 1);
        return IntStream.range(0, wrapped.size())
                .mapToObj(i -> (i == 0 ? CAUTION : " ".repeat(Width.of(CAUTION))) + wrapped.get(i));
    }

    /** {@code 16 well, 4 marked}; before it which lines are in sight, where not all are. */
    private String place(ListPane pane) {
        int marked = page.marks().all().size();
        int all = page.whose().all(state).size();
        String counts = (all - marked) + " well, " + marked + " marked";
        return listRows() < lines() ? pane.place(listRows()) + ", " + counts : counts;
    }

    private void render(ListPane pane, Rect area, Cells cells) {
        title(area.line(0), cells);
        List<String> cautions = cautions();
        write(cautions, area.lines(1, cautions.size()), cells);
        Rect list = area.lines(headRows(), listRows()).columns(0, RoundRow.COLUMNS);
        RoundRow.heading(area.line(headRows() - 1), cells);
        pane.render(list, cells.within(list));
        Rect below = area.withoutTop(headRows() + listRows() + 1);
        if (body.rows() - headRows() - listRows() >= MOST_BELOW) {
            write(HOW, below, cells);
            below = below.withoutTop(HOW.size() + 1);
        }
        write(legend(), below, cells);
        line(below.withoutTop(LEGEND_ROWS + 1), cells);
    }

    private void title(Rect line, Cells cells) {
        Whose whose = page.whose();
        String all =
                RoundWords.what(whose.pots(state).size(), !whose.bulbs(state).isEmpty());
        String title = String.join(", ", whose.name(), all, Days.full(whose.day(state)));
        cells.put(line.column() + 1, line.row(), whose.place().isPresent() ? "Round" : "Check", Style.BOLD);
        String last = whose.now(state)
                .flatMap(PlaceNow::round)
                .map(Job.Round::last)
                .map(day -> "last " + Days.day(day))
                .orElse("");
        int room = (last.isEmpty() ? line.columns() : LAST) - 1 - TITLE;
        cells.put(line.column() + TITLE, line.row(), Columns.fit(title, room), Style.INK);
        cells.put(line.column() + LAST, line.row(), last, Style.INK);
    }

    /** The keys for what is under the cursor, by the way it is grown. */
    private List<String> legend() {
        String in = Whose.unit(state) == LengthUnit.INCHES ? "inches" : "cm";
        Optional<Way> way = page.under(state).stream()
                .findFirst()
                .map(pot -> state.journal().pots().get(pot).way());
        return way.map(grown -> legend(grown, in)).orElse(LEGEND_OF_BULBS);
    }

    private static List<String> legend(Way way, String in) {
        return switch (way) {
            case DRAINED ->
                List.of(
                        "D dry, watered   W wet   R roots   N no roots   0-9 shoot in " + in,
                        "M mould          I mice  F frost   B buds       C colour   T trouble, note");
            case BOWL ->
                List.of(
                        "D dry, watered and tipped out      W wet        0-9 shoot in " + in,
                        "M mould          I mice  F frost   B buds       C colour   T trouble, note");
            case GLASS ->
                List.of(
                        "D low, topped up W high  K cloudy, changed  R roots, then 0-9 long in " + in,
                        "N no roots  0-9 shoot  M mould  F frost  B buds  C colour  T trouble, note");
            case PEBBLES ->
                List.of(
                        "D low, topped up   W high   K cloudy, changed   0-9 shoot in " + in,
                        "M mould          I mice  F frost   B buds       C colour   T trouble, note");
        };
    }

    private static void write(List<String> lines, Rect area, Cells cells) {
        for (int i = 0; i < Math.min(lines.size(), area.rows()); i++) {
            cells.put(area.column() + INDENT, area.row() + i, lines.get(i), Style.INK);
        }
    }

    /** What could be written instead, as far as there is room. */
    private void line(Rect area, Cells cells) {
        if (area.isEmpty()) {
            return;
        }
        cells.put(area.column() + INDENT, area.row(), SAME, Style.PENCIL);
        int room = area.columns() - LINE - 1;
        List<String> wrapped = Columns.wrap(page.whose().line(state, page.marks()), room);
        int shown = Math.min(wrapped.size(), area.rows());
        for (int i = 0; i < shown; i++) {
            boolean isCut = i == shown - 1 && shown < wrapped.size();
            String text = isCut ? String.join(" ", wrapped.subList(i, wrapped.size())) : wrapped.get(i);
            cells.put(area.column() + LINE, area.row() + i, Columns.fit(text, room), Style.INK);
        }
    }

    /** How the pot under the cursor would stand with what is marked of it. */
    private Aside aside() {
        Optional<Id<Pot>> pot = page.under(state).stream().findFirst();
        return pot.map(under -> aside(asMarked(under), under)).orElseGet(this::ofBulbs);
    }

    private static Aside aside(State marked, Id<Pot> pot) {
        PotNow now = marked.almanac().pot(pot);
        return new PotWords(marked.journal(), marked.shown().today())
                .matters(now)
                .map(matter -> Aside.of(now.life().pot().label(), matter))
                .orElseGet(() -> new PotAside(marked).of(pot));
    }

    /** How long the dry bulbs under the cursor may wait. */
    private Aside ofBulbs() {
        return page.bulbsUnder(state)
                .map(bulbs -> new DryBulbAside(state).of(bulbs))
                .orElse(Aside.NONE);
    }

    private State asMarked(Id<Pot> pot) {
        if (page.marks().of(pot).isNothing()) {
            return state;
        }
        Snapshot shown = state.shown();
        Instant morning =
                shown.today().atStartOfDay(shown.journal().settings().zone()).toInstant();
        Hand hand = new Hand(morning, shown.today(), state.kit().ids());
        Whose only = Whose.of(state, List.of(pot));
        return only.change(state, page.marks())
                .on(shown.journal(), hand)
                .fold(
                        step -> state.with(new Snapshot(
                                shown.journal().with(step.edits()),
                                shown.today(),
                                shown.toTakeBack(),
                                shown.toPutBack())),
                        refusal -> state);
    }
}
