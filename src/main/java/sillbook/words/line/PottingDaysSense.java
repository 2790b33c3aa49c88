// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.words.DaysOfWeek;

/** The days of the week on which pots are potted: {@code potting sat, sun}. */
final class PottingDaysSense implements Sense<Set<DayOfWeek>> {
    private static final List<String> LEADS = List.of("potting on", "potting", "potted on");

    @Override
    public Optional<Found<Set<DayOfWeek>>> at(Written line, int from, Bench bench) {
        return Senses.leadIn(line, from, LEADS).flatMap(start -> read(line, start));
    }

    private static Optional<Found<Set<DayOfWeek>>> read(Written line, int start) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        int end = start;
        for (int at = start; at < line.size(); at++) {
            Optional<DayOfWeek> day = DaysOfWeek.find(line.folded(at, at + 1));
            if (day.isPresent()) {
                days.add(day.get());
                end = at + 1;
            } else if (!line.isMark(at, ",") && !line.folded(at, at + 1).equals("and")) {
                break;
            }
        }
        return days.isEmpty() ? Optional.empty() : Optional.of(Found.whole(end, days));
    }
}
