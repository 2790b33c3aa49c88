// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pots;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.chart.Days;
import sillbook.chart.PotStage;
import sillbook.chart.RulerLayout;
import sillbook.chart.StageSpan;
import sillbook.season.BatchShare;
import sillbook.season.Due;
import sillbook.season.Phase;
import sillbook.season.PotLine;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.PotLineStroke;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.words.JobWords;
import sillbook.words.PotNames;

/** The lines of the page of pots. */
public final class PotRows {
    private static final int PICK = 1;
    private static final int SIGN = 2;
    private static final int NAME = 8;

    private final State state;
    private final PotOrder order;
    private final PotNames names;

    public PotRows(State state, PotOrder order) {
        this.state = state;
        this.order = order;
        this.names = new PotNames(state.journal());
    }

    Rows rows() {
        List<PotLine> lines =
                order.sort(state, state.almanac().lines(state.timescale().season()));
        if (lines.isEmpty()) {
            return Rows.of(new NoPots(state).rows());
        }
        return Rows.of(lines.stream().map(this::row).toList());
    }

    private Row row(PotLine line) {
        return Row.of(new Thing.OfPots(line.pots()), (area, cells) -> render(line, area, cells));
    }

    /** One pot or batch on a line of the page. */
    public void render(PotLine line, Rect area, Cells cells) {
        RulerLayout ruler = state.timescale().ruler(state, area.columns());
        if (state.picked().containsAll(line.pots())) {
            cells.put(area.column() + PICK, area.row(), Sign.PICKED, Style.BOLD);
        }
        sign(line).ifPresent(mark -> cells.put(area.column() + SIGN, area.row(), mark.sign(), mark.style()));
        new PotLineStroke(ruler, charted(ruler, line)).render(area, cells);
        String label = names.labels(line.pots());
        cells.put(area.column() + Row.LABEL, area.row(), label, Style.BOLD);
        int name = Math.max(NAME, Row.LABEL + Width.of(label) + 1);
        String said = name(line);
        int left = ruler.leftColumns() - name - 1;
        boolean needsMore = line.batch().filter(BatchShare::isParted).isPresent();
        String fitted = needsMore ? said + " " : Columns.fit(said, left);
        cells.put(area.column() + name, area.row(), fitted, Style.INK);
    }

    /** A batch that has parted says how, after its name. */
    private String name(PotLine line) {
        String name = names.name(line.pots().get(0));
        return line.batch()
                .filter(BatchShare::isParted)
                .map(batch -> name + "  " + JobWords.counts(batch, ""))
                .orElse(name);
    }

    /** A sign and how it is drawn. */
    private record Mark(Sign sign, Style style) {}

    private static Optional<Mark> sign(PotLine line) {
        return line.next().flatMap(job -> mark(job.due()));
    }

    private static Optional<Mark> mark(Due due) {
        return switch (due) {
            case LATE -> Optional.of(new Mark(Sign.LATE, Style.RUST));
            case READY -> Optional.of(new Mark(Sign.READY, Style.of(Role.LEAF)));
            case TODAY -> Optional.of(new Mark(Sign.NOW, Style.BOLD));
            case SOON -> Optional.of(new Mark(Sign.SOON, Style.PENCIL));
            case LATER -> Optional.empty();
        };
    }

    private static sillbook.chart.PotLine charted(RulerLayout ruler, PotLine line) {
        List<StageSpan> spans = new ArrayList<>();
        Optional<PotStage> today = Optional.empty();
        for (Phase phase : line.phases()) {
            Days days = new Days(phase.days().start(), phase.days().endExclusive());
            spans.add(new StageSpan(stage(phase), days));
            if (phase.happened()) {
                today = Optional.of(stage(phase));
            }
        }
        return sillbook.chart.PotLine.of(ruler, spans, today);
    }

    private static PotStage stage(Phase phase) {
        return switch (phase.stage()) {
            case WAITING -> PotStage.BEFORE;
            case COLD -> PotStage.COLD;
            case COOL_ROOM -> PotStage.COOL_ROOM;
            case WARM_ROOM -> PotStage.WARM_ROOM;
            case IN_BLOOM -> PotStage.IN_BLOOM;
            case AFTER_BLOOM -> PotStage.AFTER_BLOOM;
            case DONE -> PotStage.GONE;
        };
    }
}
