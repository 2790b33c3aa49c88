// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.ZoneOffset;
import sillbook.model.Settings;
import sillbook.model.Settings.TemperatureUnit;

/** The settings of a grower who reads degrees Fahrenheit; for the rest those of a new journal. */
final class Fahrenheit {
    private static final Settings NEW = Settings.initial(ZoneOffset.UTC);

    static final Settings SETTINGS = new Settings(
            NEW.zone(), NEW.seasonStart(), TemperatureUnit.FAHRENHEIT, NEW.lengths(), NEW.colours(), NEW.dailyCare());

    private Fahrenheit() {}
}
