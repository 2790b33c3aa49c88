// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.MonthDay;
import java.time.ZoneId;

/**
 * How this journal counts and writes.
 *
 * @param zone whose midnight begins a day
 * @param seasonStart the day a new season begins
 * @param temperatures the unit temperatures are shown in
 * @param lengths the unit lengths are shown in
 * @param colours which set of colours the screens use
 * @param dailyCare whether Today has a line for the daily care of pots out of the cold
 */
public record Settings(
        ZoneId zone,
        MonthDay seasonStart,
        TemperatureUnit temperatures,
        LengthUnit lengths,
        Colours colours,
        boolean dailyCare)
        implements Entity<Settings> {

    /** There is one set of settings, so its id is known. */
    public static final Id<Settings> ID = new Id<>(0, 0);

    /** The unit temperatures are shown in. */
    public enum TemperatureUnit {
        CELSIUS,
        FAHRENHEIT
    }

    /** The unit lengths are shown in. */
    public enum LengthUnit {
        CENTIMETRES,
        INCHES
    }

    /** The background the colours are chosen for; {@code ASK} until the grower has said. */
    public enum Colours {
        ASK,
        DARK,
        LIGHT,
        EITHER,
        NONE
    }

    /** What a new journal begins with: Celsius, centimetres, seasons from 1 July. */
    public static Settings initial(ZoneId zone) {
        return new Settings(
                zone, MonthDay.of(7, 1), TemperatureUnit.CELSIUS, LengthUnit.CENTIMETRES, Colours.ASK, true);
    }

    public Settings withColours(Colours chosen) {
        return new Settings(zone, seasonStart, temperatures, lengths, chosen, dailyCare);
    }

    @Override
    public Id<Settings> id() {
        return ID;
    }
}
