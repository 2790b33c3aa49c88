// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.reckon.cold.ColdHad;
import sillbook.reckon.cold.SpanTrace;
import sillbook.reckon.cold.WarmSpell;
import sillbook.words.Provisos;

/** The cold of a stretch of time, as JSON. */
public final class ColdJson {
    private ColdJson() {}

    /**
     * The document of {@code sillbook reckon cold --json}.
     *
     * @param need in weeks
     * @param reached empty where it was not
     */
    public static String write(ColdHad had, double need, Optional<LocalDate> reached, Provisos provisos) {
        Fields fields = new Fields()
                .number("readings", had.readings())
                .number("hours", had.hours())
                .number("effectiveHours", had.effective())
                .decimal("effectiveHoursBridged", had.bridged())
                .number("effectiveWeeks", had.weeks())
                .number("countHours", had.counted())
                .number("readingCount", had.tally())
                .number("chillingHours0to7", had.chilling())
                .number("freezingHours", had.freezing())
                .list("warmSpells", had.warmSpells(), ColdJson::spell)
                .number("unaccountedHours", had.unaccounted())
                .number("needWeeks", need)
                .day("reached", reached);
        return Answer.write(fields, provisos);
    }

    /** The same document of spans, whose cold is only bounded. */
    public static String spans(
            SpanTrace.Had had, double need, Optional<LocalDate> first, Optional<LocalDate> certain, Provisos provisos) {
        Fields fields = new Fields()
                .number("spans", had.spans())
                .number("hours", had.hours())
                .number("effectiveHoursLeast", had.least())
                .number("effectiveHoursMost", had.most())
                .number("effectiveWeeksLeast", had.least() / ColdHad.WEEK)
                .number("effectiveWeeksMost", had.most() / ColdHad.WEEK)
                .number("unaccountedHours", had.unaccounted())
                .number("needWeeks", need)
                .day("reachedFirst", first)
                .day("reachedForCertain", certain);
        return Answer.write(fields, provisos);
    }

    private static Fields spell(WarmSpell spell) {
        return new Fields()
                .text("from", spell.from().toString())
                .text("to", spell.to().toString())
                .number("highest", spell.highest());
    }
}
