// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import sillbook.exchange.RoundList;
import sillbook.exchange.RoundList.Row;
import sillbook.model.Journal;
import sillbook.model.Pot.Way;
import sillbook.season.Readiness;
import sillbook.season.Verdict;
import sillbook.season.WaitingBulbs;
import sillbook.text.Columns;
import sillbook.text.Initial;
import sillbook.text.Width;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.Lengths;
import sillbook.words.PotNames;
import sillbook.words.RoundWords;
import sillbook.words.Weeks;

/** The list of a round for paper: what stands there, boxes to tick, and how it is written back. */
record RoundText(RoundList list, List<String> cautions) {
    private static final int WIDTH = 80;
    private static final int LABELS = 8;
    private static final int MOST_LABELS = 18;
    private static final int NAME = 32;
    private static final int WEEKS = 48;
    private static final String INDENT = " ".repeat(LABELS);

    List<String> lines() {
        if (list.rows().isEmpty() && list.bulbs().isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>(List.of(title(), when(), "", heading()));
        list.rows().forEach(row -> add(row, lines));
        list.bulbs().forEach(bulbs -> add(bulbs, lines));
        lines.add("");
        lines.addAll(writtenBack());
        cautions.forEach(caution -> lines.addAll(wrapped("! " + caution)));
        return lines;
    }

    private String title() {
        return Columns.fit("Round of the " + list.place().name(), WIDTH);
    }

    private String when() {
        String asked = list.round()
                .map(round -> ", every " + Counts.of(round.everyDays(), "day") + ", last " + Days.date(round.last()))
                .orElse("");
        String what = RoundWords.what(list.pots(), !list.bulbs().isEmpty());
        return Days.aloud(list.day()) + ". " + Initial.large(what) + asked + ".";
    }

    private static String heading() {
        return Columns.left("", NAME) + Columns.left("weeks in, cold", WEEKS - NAME) + "last time";
    }

    private void add(Row row, List<String> lines) {
        lines.addAll(pot(row));
        lines.add(boxes(row.first().life().pot().way()));
        if (row.pots().size() > 1) {
            lines.add(blank("not all alike: "));
        }
        if (isDecidedByALook(row)) {
            lines.add(INDENT + "look for roots or a shoot: its weeks are had");
        }
    }

    /** Bulbs that wait dry: are they firm? */
    private void add(WaitingBulbs bulbs, List<String> lines) {
        String name = "dry " + new PotNames(journal()).variety(bulbs.purchase().variety()) + " x" + bulbs.bulbs();
        String weeks = bulbs.dry().days() == 0
                ? ""
                : "dry, " + Math.round(Weeks.ofDays(bulbs.dry().days()));
        String felt = bulbs.felt().map(day -> "felt " + Days.date(day)).orElse("");
        lines.add((Columns.left(Columns.fit(name, NAME - 1), NAME) + Columns.left(weeks, WEEKS - NAME) + felt)
                .stripTrailing());
        lines.add(blank("[ ] firm [ ] soft [ ] mould "));
    }

    /** What stands there; many labels that do not run have lines of their own. */
    private List<String> pot(Row row) {
        PotNames names = new PotNames(journal());
        String labels = names.labels(row.pots());
        List<String> lines = new ArrayList<>();
        int column = Math.max(LABELS, Width.of(labels) + 1);
        if (column > MOST_LABELS) {
            lines.addAll(wrapped(labels));
            labels = "";
            column = LABELS;
        }
        lines.add((Columns.left(labels, column)
                        + Columns.left(names.nameAndCount(row.pots()), NAME - 1 - column)
                        + " "
                        + Columns.left(weeks(row), WEEKS - NAME)
                        + Columns.fit(lastTime(row), WIDTH - WEEKS))
                .stripTrailing());
        return lines;
    }

    private static String weeks(Row row) {
        return RoundWords.weeks(row.first())
                .map(cold -> cold.in() + (cold.in() == cold.coldEnough() ? ", all" : ", about " + cold.coldEnough()))
                .orElse("");
    }

    private static String lastTime(Row row) {
        return row.looked().map(day -> Days.date(day) + ": ").orElse("") + row.lastTime();
    }

    /** What can be seen in its way of growing. */
    private String boxes(Way way) {
        String unit = Lengths.unit(journal().settings().lengths());
        return switch (way) {
            case DRAINED -> blank("[ ] dry [ ] wet [ ] roots [ ] no roots ____ " + unit + " [ ] buds [ ] mould ");
            case BOWL -> blank("[ ] dry [ ] wet ____ " + unit + " [ ] buds [ ] mould ");
            case GLASS -> blank("[ ] water low [ ] high [ ] cloudy, roots ____ " + unit + ", shoot ____ " + unit + " ");
            case PEBBLES -> blank("[ ] water low [ ] high [ ] cloudy ____ " + unit + " [ ] buds ");
        };
    }

    /** What stands before a blank to write in, and the blank, to the edge of the paper. */
    private static String blank(String before) {
        return INDENT + before + "_".repeat(WIDTH - LABELS - Width.of(before));
    }

    private static boolean isDecidedByALook(Row row) {
        return row.first()
                .readiness()
                .map(Readiness::verdict)
                .filter(verdict -> verdict == Verdict.CHECK_FIRST)
                .isPresent();
    }

    private List<String> writtenBack() {
        List<String> lines = new ArrayList<>(
                wrapped("What is not ticked is well; what is dry is watered, what is low topped up. In the blanks: "
                        + "colour, mice, frost, rot, or trouble and a few words. It is written back as one line, "
                        + "with L on any page or with sillbook write, as:"));
        lines.add("  " + list.example());
        String own = "  " + list.line() + ", ";
        lines.add(own + "_".repeat(Math.max(0, WIDTH - Width.of(own))));
        return lines;
    }

    private static List<String> wrapped(String text) {
        return Columns.wrap(text, WIDTH);
    }

    private Journal journal() {
        return list.journal();
    }
}
