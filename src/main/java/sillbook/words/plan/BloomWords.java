// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.plan.Ribbon;
import sillbook.reckon.dates.DaySpan;
import sillbook.words.Counts;
import sillbook.words.Days;

/** Which days of a plan have something in flower, as it is said. */
public final class BloomWords {
    /** More spells than these are only counted. */
    private static final int NAMED = 3;

    private BloomWords() {}

    /** {@code flowers from 5 Jan to 31 Mar; none on 17-18 Jan and 22-24 Feb}; empty where nothing flowers. */
    public static Optional<String> days(Ribbon ribbon) {
        List<LocalDate> inFlower = ribbon.days()
                .start()
                .datesUntil(ribbon.days().endExclusive())
                .filter(day -> ribbon.pots(day) > 0)
                .toList();
        if (inFlower.isEmpty()) {
            return Optional.empty();
        }
        DaySpan all = DaySpan.ofInclusive(inFlower.get(0), inFlower.get(inFlower.size() - 1));
        return Optional.of("flowers from " + Days.fromTo(all.start(), all.last()) + without(ribbon, all));
    }

    private static String without(Ribbon ribbon, DaySpan all) {
        List<DaySpan> bare = DaySpan.joined(all.start()
                .datesUntil(all.endExclusive())
                .filter(day -> ribbon.pots(day) == 0)
                .map(day -> DaySpan.ofInclusive(day, day))
                .toList());
        return bare.isEmpty() ? ", every day" : "; none on " + spells(bare);
    }

    /** {@code 17-18 Jan and 22-24 Feb}; of many the first, and how many more. */
    static String spells(List<DaySpan> spans) {
        List<String> said = new ArrayList<>(spans.stream()
                .limit(spans.size() > NAMED ? NAMED - 1 : NAMED)
                .map(Days::span)
                .toList());
        if (spans.size() > NAMED) {
            said.add(spans.size() - said.size() + " times more");
        }
        return Counts.and(said);
    }
}
