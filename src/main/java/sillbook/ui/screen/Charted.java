// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import sillbook.chart.Days;
import sillbook.chart.PotLine;
import sillbook.chart.PotStage;
import sillbook.chart.RulerLayout;
import sillbook.chart.StageSpan;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Phase;

/** What is true of a season, as the charts take it. */
public final class Charted {
    private Charted() {}

    public static Days days(DaySpan span) {
        return new Days(span.start(), span.endExclusive());
    }

    /** The phases of a pot or a batch as a line under that ruler. */
    public static PotLine line(RulerLayout ruler, List<Phase> phases) {
        List<StageSpan> spans = phases.stream()
                .map(phase -> new StageSpan(stage(phase.stage()), days(phase.days())))
                .toList();
        return PotLine.of(ruler, spans, Optional.empty());
    }

    private static PotStage stage(Stage stage) {
        return switch (stage) {
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
