// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;

/** Days and moments as a file prints them (ISO 8601), a blank allowed for the T. What could mean two days is not read. */
final class Moments {
    private static final int DAY = "2026-10-01".length();

    private Moments() {}

    /** The first and the last moment of what was given: a day is all of it. */
    record Ends(Instant first, Instant last) {}

    /**
     * Reads one of the ends of a stretch.
     *
     * @param zone of what names none itself
     * @throws Misused when it is none
     */
    static Ends given(String text, ZoneId zone) {
        return day(text)
                .map(day -> new Ends(start(day, zone), start(day.plusDays(1), zone)))
                .or(() -> moment(text, zone).map(at -> new Ends(at, at)))
                .orElseThrow(() ->
                        new Misused("'" + text + "' is no day and no moment. Write 2026-10-01, or 2026-10-01T08:00."));
    }

    /** The same of a stretch of days. */
    static LocalDate givenDay(String text) {
        return day(text)
                .orElseThrow(() -> new Misused("'" + text + "' is no day, and the file has days. Write 2026-10-01."));
    }

    /** The moment a day begins. */
    static Instant start(LocalDate day, ZoneId zone) {
        return day.atStartOfDay(zone).toInstant();
    }

    static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeException other) {
            return Optional.empty();
        }
    }

    /** With a zone's offset where one is printed, else in that zone. */
    static Optional<Instant> moment(String text, ZoneId zone) {
        String stripped = text.strip();
        String iso = stripped.length() > DAY && stripped.charAt(DAY) == ' '
                ? stripped.substring(0, DAY) + 'T' + stripped.substring(DAY + 1)
                : stripped;
        try {
            return Optional.of(
                    hasOffset(iso)
                            ? OffsetDateTime.parse(iso).toInstant()
                            : LocalDateTime.parse(iso).atZone(zone).toInstant());
        } catch (DateTimeException other) {
            return Optional.empty();
        }
    }

    /** Whether a moment says how far from Greenwich its clock is. */
    static boolean hasOffset(String moment) {
        String clock = moment.length() > DAY ? moment.substring(DAY) : "";
        return clock.endsWith("Z") || clock.contains("+") || clock.contains("-");
    }
}
