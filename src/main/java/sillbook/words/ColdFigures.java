// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.reckon.cold.ColdHad;
import sillbook.reckon.cold.SpanTrace;
import sillbook.reckon.cold.WarmSpell;

/** The cold of a stretch of time in plain lines. */
public final class ColdFigures {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    private ColdFigures() {}

    /**
     * A fact a line.
     *
     * @param need in weeks
     * @param reached empty where it was not
     * @param zone of the moments that are said
     */
    public static List<String> lines(ColdHad had, double need, Optional<LocalDate> reached, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        lines.add(Counts.of(had.readings(), "reading") + " over " + hours(had.hours()));
        lines.add("effective: " + hours(had.effective()) + ", " + Decimal.sayFixed(had.weeks(), 2) + " weeks");
        if (had.unaccounted() > 0) {
            String bridged = had.bridged()
                    .map(all -> "; bridged it would be " + hours(all))
                    .orElse("");
            lines.add("not accounted for: " + hours(had.unaccounted()) + bridged);
        }
        lines.add("strict count, above 0 and up to 9 C: " + hours(had.counted()) + ", " + had.tally()
                + " of the readings");
        lines.add("chilling, 0 to 7.2 C: " + hours(had.chilling()));
        lines.add("below 0 C: " + hours(had.freezing()));
        had.warmSpells().forEach(spell -> lines.add(said(spell, zone)));
        String weeks = weeks(need);
        lines.add(reached.map(day -> weeks + " reached on " + Days.full(day)).orElse(weeks + " not reached"));
        return lines;
    }

    private static String weeks(double need) {
        return Weeks.number(need) + (need == 1 ? " week" : " weeks");
    }

    /**
     * The same of spans, whose cold is only bounded.
     *
     * @param first the day on which the need may have been reached; empty where it cannot have been
     * @param certain the day on which it was for certain
     */
    public static List<String> spans(
            SpanTrace.Had had, double need, Optional<LocalDate> first, Optional<LocalDate> certain) {
        List<String> lines = new ArrayList<>();
        lines.add(Counts.of(had.spans(), "span") + " over " + hours(had.hours()));
        lines.add("effective: at least " + hours(had.least()) + ", " + inWeeks(had.least()) + "; at most "
                + hours(had.most()) + ", " + inWeeks(had.most()));
        if (had.unaccounted() > 0) {
            lines.add("not accounted for: " + hours(had.unaccounted()));
        }
        lines.add(weeks(need)
                + first.map(day -> " reached on " + Days.full(day) + " at the earliest, "
                                + certain.map(sure -> "for certain on " + Days.full(sure))
                                        .orElse("not for certain"))
                        .orElse(" cannot have been reached"));
        return lines;
    }

    private static String inWeeks(double hours) {
        return Decimal.sayFixed(hours / ColdHad.WEEK, 2) + " weeks";
    }

    private static String hours(double hours) {
        return Decimal.sayFixed(hours, 2) + " hours";
    }

    private static String said(WarmSpell spell, ZoneId zone) {
        return "warmer than 13 C from " + moment(spell.from(), zone) + " to " + moment(spell.to(), zone) + ", up to "
                + Decimal.say(spell.highest(), 1) + " C";
    }

    private static String moment(Instant at, ZoneId zone) {
        LocalDateTime printed = LocalDateTime.ofInstant(at, zone);
        return Days.full(printed.toLocalDate()) + " " + CLOCK.format(printed);
    }
}
