// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;

/** Gathers the days in flower of all lines of a season. */
final class SillReading {
    private SillReading() {}

    static Sill of(List<List<Phase>> lines) {
        return new Sill(spans(lines, true), spans(lines, false));
    }

    private static List<DaySpan> spans(List<List<Phase>> lines, boolean happened) {
        return DaySpan.joined(lines.stream()
                .flatMap(List::stream)
                .filter(phase -> phase.stage() == Stage.IN_BLOOM && phase.happened() == happened)
                .map(Phase::days)
                .toList());
    }
}
