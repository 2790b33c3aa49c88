// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.season.Due;
import sillbook.season.Job;
import sillbook.season.Today;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotFound;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.GroundJobWords;
import sillbook.words.JobWords;
import sillbook.words.PotNames;

/** The lines of Today, section after section; a section without lines is left out. */
final class TodayRows {
    static final int COLUMNS = 80;
    private static final int REMARK = 29;

    /** From so many lines of body on there is room for blank lines, and for what comes later. */
    private static final int ROOMY = 23;

    private final State state;
    private final Size body;
    private final Today today;
    private final JobWords words;
    private final PotNames names;
    private final List<Row> rows = new ArrayList<>();

    TodayRows(State state, Size body) {
        this.state = state;
        this.body = body;
        today = state.almanac().today();
        words = new JobWords(state.journal(), today.day());
        names = new PotNames(state.journal());
    }

    Rows rows() {
        if (state.journal().pots().isEmpty()) {
            return Rows.of(new EmptyToday(state).rows());
        }
        jobs(heading("Late", "a dated wish, or the use-by day, is in danger"), today.late(), Sign.LATE, Style.RUST);
        jobs(heading("Ready", "cold enough and rooted; may wait"), today.ready(), Sign.READY, Style.of(Role.LEAF));
        jobs(heading("Today", ""), today.due(), Sign.NOW, Style.BOLD);
        checks();
        ground();
        orders();
        sayWhenNothingIsDue();
        jobs(heading("Next " + Today.SOON_DAYS + " days", ""), today.soon(), Sign.SOON, Style.PENCIL);
        boolean wide = TodayMargin.fits(body);
        if (body.rows() >= ROOMY) {
            new LaterRows(state).rows().forEach(this::section);
        }
        return new Rows(rows, wide ? List.of() : new PinnedRows(state).rows());
    }

    private static Row heading(String text, String remark) {
        return Row.heading(text, REMARK, remark);
    }

    private void section(List<Row> section) {
        if (body.rows() >= ROOMY && !rows.isEmpty()) {
            rows.add(Row.BLANK);
        }
        rows.addAll(section);
    }

    private void jobs(Row heading, List<Job.OfPots> jobs, Sign sign, Style style) {
        List<Row> section = new ArrayList<>(List.of(heading));
        jobs.forEach(job -> section.add(row(job, sign, style)));
        if (!jobs.isEmpty()) {
            section(section);
        }
    }

    private Row row(Job.OfPots job, Sign sign, Style style) {
        boolean isPicked = state.picked().containsAll(job.pots());
        JobLine line = new JobLine(
                sign,
                style,
                isPicked,
                names.labels(job.pots()),
                names.nameAndCount(job.pots()),
                words.inList(job),
                words.where(job),
                words.when(job));
        return Row.of(new Thing.OfPots(job.pots()), line)
                .foundBy(new PotFound(state).words(job.pots()), line.what(), line.where(), line.when());
    }

    private void checks() {
        List<Row> section = new ArrayList<>(List.of(heading("Checks", "")));
        today.checks().forEach(round -> section.add(row(round)));
        today.dailyCare().filter(care -> !care.pots().isEmpty()).ifPresent(care -> section.add(row(care)));
        if (section.size() > 1) {
            section(section);
        }
    }

    private void ground() {
        List<Row> section = new ArrayList<>(List.of(heading("Trench", "")));
        today.ground().forEach(job -> section.add(row(job)));
        if (section.size() > 1) {
            section(section);
        }
    }

    private void orders() {
        OrderRows orders = new OrderRows(state);
        if (!orders.rows().isEmpty()) {
            section(Stream.concat(Stream.of(heading("To order", "")), orders.rows().stream())
                    .toList());
        }
    }

    private Row row(Job.OfGround job) {
        boolean isDue = job.due() == Due.TODAY;
        JobLine line = new JobLine(
                isDue ? Sign.NOW : Sign.SOON,
                isDue ? Style.BOLD : Style.PENCIL,
                false,
                names.place(job.place()),
                "",
                GroundJobWords.what(job),
                GroundJobWords.because(job),
                GroundJobWords.when(job));
        return Row.of(new Thing.OfGround(job.place(), job.kind()), line).foundBy(line.label(), line.what());
    }

    private Row row(Job.Round round) {
        String who = names.place(round.place()) + ", " + JobWords.what(round);
        JobLine line = new JobLine(
                Sign.NOW,
                Style.BOLD,
                false,
                who,
                "",
                words.asks(round),
                "every " + Counts.of(round.everyDays(), "day"),
                JobWords.last(round));
        return Row.of(new Thing.OfPlace(round.place()), line).foundBy(who, "check round");
    }

    private Row row(Job.DailyCare care) {
        String who = "daily care, " + care.pots().size() + " of " + Counts.of(care.ofPots(), "pot");
        JobLine line = new JobLine(
                Sign.NOW, Style.BOLD, false, who, "", "moist? flower? turned?", words.places(care.places()), "");
        return Row.of(DAILY_CARE, line).foundBy(who, line.where());
    }

    static final Thing DAILY_CARE = new Thing.Named("daily care");

    private void sayWhenNothingIsDue() {
        if (rows.isEmpty()) {
            Optional<Job.OfPots> next = today.soon().stream()
                    .findFirst()
                    .or(() -> today.later().stream().findFirst());
            String says = next.map(job -> "Nothing is due until " + Days.day(job.on()) + ".")
                    .orElse("Nothing is due.");
            rows.add(Row.of((area, cells) -> cells.put(area.column() + Row.LABEL, area.row(), says, Style.INK)));
        }
    }
}
