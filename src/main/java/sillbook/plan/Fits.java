// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Forcing;

/** Keeps what was worked out of the cold of pots, for the next that take the same. */
final class Fits {
    private final List<ColdTable> colds;
    private final DaySpan season;
    private final Map<Key, ColdFit> known = new HashMap<>();

    /** What it depends on. */
    private record Key(Forcing forcing, LocalDate readyFrom) {}

    Fits(List<Berth> colds, DaySpan season) {
        this.colds = colds.stream().map(berth -> new ColdTable(berth, season)).toList();
        this.season = season;
    }

    ColdFit of(Forcing forcing, LocalDate readyFrom) {
        return known.computeIfAbsent(
                new Key(forcing, readyFrom), key -> new ColdFit(key.forcing(), key.readyFrom(), colds, season));
    }
}
