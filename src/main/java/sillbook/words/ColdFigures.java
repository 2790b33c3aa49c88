// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.reckon.cold.ColdHad;
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
     */
    public static List<String> lines(ColdHad had, double need, Optional<LocalDate> reached) {
        List<String> lines = new ArrayList<>();
        lines.add(Counts.of(had.readings(), "reading") + " over " + hours(had.hours()));
        lines.add("effective: " + hours(had.effective()) + ", " + Decimal.sayFixed(had.weeks(), 2) + " weeks");
        if (had.unaccounted() > 0) {
            lines.add(
                    "not accounted for: " + hours(had.unaccounted()) + "; bridged it would be " + hours(had.bridged()));
        }
        lines.add("strict count, above 0 and up to 9 C: " + hours(had.counted()) + ", " + had.tally()
                + " of the readings");
        lines.add("chilling, 0 to 7.2 C: " + hours(had.chilling()));
        lines.add("below 0 C: " + hours(had.freezing()));
        had.warmSpells().forEach(spell -> lines.add(said(spell)));
        String weeks = Weeks.number(need) + (need == 1 ? " week" : " weeks");
        lines.add(reached.map(day -> weeks + " reached on " + Days.full(day)).orElse(weeks + " not reached"));
        return lines;
    }

    private static String hours(double hours) {
        return Decimal.sayFixed(hours, 2) + " hours";
    }

    private static String said(WarmSpell spell) {
        return "warmer than 13 C from " + moment(spell.from()) + " to " + moment(spell.to()) + ", up to "
                + Decimal.say(spell.highest(), 1) + " C";
    }

    private static String moment(Instant at) {
        LocalDateTime printed = LocalDateTime.ofInstant(at, ZoneOffset.UTC);
        return Days.full(printed.toLocalDate()) + " " + CLOCK.format(printed);
    }
}
