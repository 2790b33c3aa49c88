// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.model.Settings;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;
import sillbook.model.Thermometer;
import sillbook.model.Thermometer.IceTest;

/** What was read at a place, and what it was read with, without the place. */
public record ReadingWords(Settings settings) {

    /** {@code 3 to 8 C since 5 Jan}. */
    public String say(SpanReading span) {
        return Temperatures.fromTo(span.between(), settings.temperatures()) + " since "
                + Days.date(span.from().likely());
    }

    /** {@code 5 C at 8:10}. */
    public String say(SpotReading spot) {
        ZonedDateTime at = spot.at().atZone(settings.zone());
        String read = Temperatures.say(spot.temperature(), settings.temperatures());
        return String.format(Locale.ROOT, "%s at %d:%02d", read, at.getHour(), at.getMinute());
    }

    /** {@code winter.csv: 1,440 readings, 2 Nov to 2 Jan, 3 suspicious}. */
    public String say(ReadingSource source) {
        String suspicious = source.suspicious() == 0 ? "" : ", " + source.suspicious() + " suspicious";
        return source.name() + ": " + Counts.grouped(source.readings())
                + (source.readings() == 1 ? " reading" : " readings") + ", "
                + Days.fromTo(day(source.first()), day(source.last())) + suspicious;
    }

    private LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, settings.zone());
    }

    public LocalDate day(SpotReading spot) {
        return LocalDate.ofInstant(spot.at(), settings.zone());
    }

    /** {@code thermometer on the top shelf, put right by -0.6 C (ice water, Sat 3 Oct 2026)}. */
    public String say(Thermometer thermometer) {
        List<String> facts = new ArrayList<>();
        facts.add(thermometer.lies().isEmpty() ? "thermometer" : "thermometer " + thermometer.lies());
        thermometer.ice().map(test -> correction(thermometer, test)).ifPresent(facts::add);
        return String.join(", ", facts);
    }

    private String correction(Thermometer thermometer, IceTest test) {
        String by = thermometer.correctionMilli() == 0
                ? "reads true"
                : "put right by " + Temperatures.difference(thermometer.correctionMilli(), settings.temperatures());
        return by + " (ice water, " + Days.full(test.on()) + ")";
    }

    /** {@code readings up to 10 days apart are joined}. */
    public String bridged(Place place) {
        return "readings up to " + Spells.say(place.bridges()) + " apart are joined";
    }
}
