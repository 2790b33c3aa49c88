// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
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
        List<DaySpan> sorted = lines.stream()
                .flatMap(List::stream)
                .filter(phase -> phase.stage() == Stage.IN_BLOOM && phase.happened() == happened)
                .map(Phase::days)
                .sorted(Comparator.comparing(DaySpan::start))
                .toList();
        List<DaySpan> joined = new ArrayList<>();
        for (DaySpan span : sorted) {
            int last = joined.size() - 1;
            if (last >= 0 && !span.start().isAfter(joined.get(last).endExclusive())) {
                DaySpan before = joined.get(last);
                joined.set(last, DaySpan.of(before.start(), later(before.endExclusive(), span.endExclusive())));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return other.isAfter(one) ? other : one;
    }
}
