// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import sillbook.model.DayRead;
import sillbook.model.Logged;
import sillbook.model.ReadingSource;
import sillbook.model.SpanReading;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.ReadStretch;
import sillbook.season.ReadStretch.Gap;
import sillbook.words.Provisos;

/** What thermometers read as JSON. */
public final class ReadingsJson {
    private static final double MILLI = 1000;

    private ReadingsJson() {}

    /**
     * The document of {@code sillbook readings --json}.
     *
     * @param days whether days were asked for, or readings
     */
    public static String write(List<ReadStretch> read, boolean days, Provisos provisos) {
        Fields all = new Fields().list("places", read, stretch -> days ? days(stretch) : readings(stretch));
        return Answer.write(all, provisos);
    }

    private static Fields days(ReadStretch read) {
        return new Fields()
                .text("place", read.place().name())
                .list("days", read.days(), ReadingsJson::day)
                .list("spans", read.spans(), ReadingsJson::span);
    }

    private static Fields day(DayRead day) {
        return new Fields()
                .day("day", day.day())
                .number("readings", day.readings())
                .number("knownHours", day.known())
                .number("effectiveHours", day.effective())
                .number("publishedHours", day.published())
                .number("freezingHours", day.freezing())
                .number("warmHours", day.warm())
                .number("meanC", day.mean() / MILLI)
                .number("lowestC", day.lowest() / MILLI)
                .number("highestC", day.highest() / MILLI);
    }

    private static Fields readings(ReadStretch read) {
        return new Fields()
                .text("place", read.place().name())
                .number("bridgesHours", read.place().bridges().toHours())
                .list("sources", read.sources(), ReadingsJson::source)
                .list("readings", read.readings(), ReadingsJson::reading)
                .list("gaps", read.gaps(), ReadingsJson::gap)
                .list("spans", read.spans(), ReadingsJson::span);
    }

    private static Fields span(SpanReading span) {
        Optional<DaySpan> covered = ReadStretch.covered(span);
        return new Fields()
                .day("from", span.from().likely())
                .day("to", span.to().likely())
                .number("lowestC", span.between().low().celsius())
                .number("highestC", span.between().high().celsius())
                .number("days", covered.map(DaySpan::days).orElse(0L));
    }

    private static Fields source(ReadingSource source) {
        return new Fields()
                .text("name", source.name())
                .text("sha256", source.hash())
                .number("readings", source.readings())
                .number("suspicious", source.suspicious())
                .text("first", source.first().toString())
                .text("last", source.last().toString());
    }

    private static Fields reading(Logged reading) {
        Optional<String> source = Optional.of(reading.source()).filter(name -> !name.isEmpty());
        return new Fields()
                .text("at", reading.at().toString())
                .number("celsius", reading.milli() / MILLI)
                .flag("suspicious", reading.isSuspicious())
                .text("source", source)
                .whole("line", source.map(name -> reading.line()));
    }

    private static Fields gap(Gap gap) {
        return new Fields()
                .text("from", gap.from().toString())
                .text("to", gap.to().toString())
                .number("hours", gap.length().toMinutes() / 60.0);
    }
}
