// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.reckon.dates.DaySpan;

/** Where a candidate may have its cold, so that any of these places will do on any day of a stretch of coming in. */
record ColdChoice(Candidate candidate, Planning planning) {

    /**
     * Places and days.
     *
     * @param colds cold places of the planning, by their number from 0; none where no room is taken there
     */
    record Best(DaySpan in, List<Integer> colds) {}

    /** The longest stretch; empty when it cannot come in on any day. */
    Optional<Best> best() {
        if (candidate.cold().isPresent()) {
            return candidate.in(planning.days()).map(days -> new Best(days, standing()));
        }
        if (!candidate.needsCold()) {
            return candidate.in(planning.days()).map(days -> new Best(days, List.of()));
        }
        Map<Integer, DaySpan> spans = spans();
        return spans.values().stream()
                .max(Comparator.comparingLong(DaySpan::days))
                .map(longest -> new Best(longest, holding(longest, spans)));
    }

    /** Where it stands, if that is a cold place. */
    private List<Integer> standing() {
        List<Integer> found = new ArrayList<>();
        for (int cold = 0; cold < planning.colds().size(); cold++) {
            if (candidate
                    .cold()
                    .flatMap(Candidate.InCold::place)
                    .equals(Optional.of(planning.colds().get(cold).id()))) {
                found.add(cold);
            }
        }
        return found;
    }

    private Map<Integer, DaySpan> spans() {
        Map<Integer, DaySpan> spans = new LinkedHashMap<>();
        for (int cold = 0; cold < planning.colds().size(); cold++) {
            Berth berth = planning.colds().get(cold);
            int number = cold;
            candidate.fit().longest(berth).ifPresent(span -> spans.put(number, span));
        }
        return spans;
    }

    private static List<Integer> holding(DaySpan days, Map<Integer, DaySpan> spans) {
        return spans.entrySet().stream()
                .filter(span -> span.getValue().intersection(days).equals(Optional.of(days)))
                .map(Map.Entry::getKey)
                .toList();
    }
}
