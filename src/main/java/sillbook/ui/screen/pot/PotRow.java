// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.chart.Days;
import sillbook.chart.PotStage;
import sillbook.chart.RulerLayout;
import sillbook.chart.StageSpan;
import sillbook.season.BatchShare;
import sillbook.season.Phase;
import sillbook.season.PotLine;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.PotLineStroke;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Row;
import sillbook.words.JobWords;
import sillbook.words.PotNames;

/** One pot or batch on a line under the ruler: its signs, its name, its winter. */
public record PotRow(State state, PotLine line) implements Widget {
    private static final int PICK = 1;
    private static final int SIGN = 2;
    private static final int NAME = 8;

    /** As a line of a list. */
    public Row row() {
        return Row.of(new Thing.OfPots(line.pots()), this).foundBy(new PotFound(state).words(line.pots()));
    }

    @Override
    public void render(Rect area, Cells cells) {
        RulerLayout ruler = state.timescale().ruler(state, area.columns());
        if (state.picked().containsAll(line.pots())) {
            cells.put(area.column() + PICK, area.row(), Sign.PICKED, Style.BOLD);
        }
        line.next()
                .flatMap(job -> DueSign.of(job.due()))
                .ifPresent(mark -> cells.put(area.column() + SIGN, area.row(), mark.sign(), mark.style()));
        new PotLineStroke(ruler, charted(ruler)).render(area, cells);
        String label = names().labels(line.pots());
        cells.put(area.column() + Row.LABEL, area.row(), label, Style.BOLD);
        int name = Math.max(NAME, Row.LABEL + Width.of(label) + 1);
        String said = name();
        int left = ruler.leftColumns() - name - 1;
        boolean needsMore = line.batch().filter(BatchShare::isParted).isPresent();
        String fitted = needsMore ? said + " " : Columns.fit(said, left);
        cells.put(area.column() + name, area.row(), fitted, Style.INK);
    }

    private PotNames names() {
        return new PotNames(state.journal());
    }

    /** A batch that has parted says how, after its name. */
    private String name() {
        String name = names().name(line.pots().get(0));
        return line.batch()
                .filter(BatchShare::isParted)
                .map(batch -> name + "  " + JobWords.counts(batch, ""))
                .orElse(name);
    }

    private sillbook.chart.PotLine charted(RulerLayout ruler) {
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
