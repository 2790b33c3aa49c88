// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Logged;
import sillbook.model.ReadingSource;
import sillbook.model.Settings;
import sillbook.model.SpanReading;
import sillbook.model.Temperature;
import sillbook.reckon.cold.ColdWeight;
import sillbook.season.ReadStretch;
import sillbook.season.ReadStretch.Gap;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.ReadingWords;
import sillbook.words.Spells;
import sillbook.words.Temperatures;

/** What was read at places as plain lines. */
record ReadingsText(Settings settings) {
    private static final String INDENT = "  ";
    private static final double MILLI = 1000;

    /** What freezes, and what counts for no cold, in thousandths of a degree. */
    private static final int FREEZING = 0;

    private static final int WARM = (int) (ColdWeight.USUAL.gone() * MILLI);

    /** The place and where it is from, then indented what was read. */
    Stream<String> lines(ReadStretch read) {
        Stream<String> head = Stream.concat(
                Stream.of(read.place().name() + ":"),
                Stream.concat(
                        read.sources().stream().map(this::source),
                        read.spans().stream().map(this::span)));
        return Stream.of(head, readings(read).stream(), read.days().stream().map(this::day))
                .flatMap(lines -> lines);
    }

    /** {@code   from winter.csv: 1,440 readings, 2 Nov to 2 Jan, 3 suspicious}. */
    private String source(ReadingSource source) {
        return INDENT + "from " + new ReadingWords(settings).say(source);
    }

    /** {@code   3 to 8 C from Sun 1 Nov 2026, read Thu 26 Nov 2026: holds for 25 days, Sun 1 Nov 2026 to Wed 25 Nov 2026}. */
    private String span(SpanReading span) {
        String read = INDENT + Temperatures.fromTo(span.between(), settings.temperatures()) + " from "
                + Days.full(span.from()) + ", read " + Days.full(span.to());
        return read
                + ReadStretch.covered(span)
                        .map(days -> ": holds for " + Counts.of(days.days(), "day") + ", " + Days.full(days.start())
                                + (days.days() == 1 ? "" : " to " + Days.full(days.last())))
                        .orElse("");
    }

    private List<String> readings(ReadStretch read) {
        List<String> lines = new ArrayList<>();
        Iterator<Gap> gaps = read.gaps().iterator();
        Gap gap = gaps.hasNext() ? gaps.next() : new Gap(Instant.MAX, Instant.MAX);
        for (Logged reading : read.readings()) {
            if (reading.at().equals(gap.to())) {
                lines.add(INDENT + "nothing known for " + Spells.roughly(gap.length()));
                gap = gaps.hasNext() ? gaps.next() : new Gap(Instant.MAX, Instant.MAX);
            }
            lines.add(reading(reading));
        }
        return lines;
    }

    /** {@code   Mon 2 Nov 2026 14:30    5.0 C, suspicious}. */
    private String reading(Logged reading) {
        ZonedDateTime at = at(reading.at());
        String from = reading.source().isEmpty() ? ", typed" : "";
        return String.format(
                Locale.ROOT,
                "%s%s %s %02d:%02d %9s%s%s",
                INDENT,
                Days.column(at.toLocalDate()),
                at.getYear(),
                at.getHour(),
                at.getMinute(),
                celsius(reading.milli()),
                reading.isSuspicious() ? ", suspicious" : "",
                from);
    }

    /** {@code   Mon  2 Nov 2026: 2.1 to 8 C, mean 5 C; 24.0 h known, 22.5 h cold}. */
    private String day(DayRead day) {
        Band band = new Band(new Temperature(day.lowest(), ""), new Temperature(day.highest(), ""));
        return String.format(
                Locale.ROOT,
                "%s%s %d: %s, mean %s; %.1f h known, %.1f h cold%s%s",
                INDENT,
                Days.column(day.day()),
                day.day().getYear(),
                Temperatures.fromTo(band, settings.temperatures()),
                celsius(day.mean()),
                day.known(),
                day.effective(),
                hours(day.freezing(), "below " + celsius(FREEZING)),
                hours(day.warm(), "above " + celsius(WARM)));
    }

    private static String hours(double hours, String what) {
        return hours < 0.05 ? "" : String.format(Locale.ROOT, ", %.1f h %s", hours, what);
    }

    private String celsius(int milli) {
        return Temperatures.number(milli / MILLI, settings.temperatures()) + " "
                + Temperatures.unit(settings.temperatures());
    }

    private ZonedDateTime at(Instant instant) {
        return instant.atZone(settings.zone());
    }
}
