// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.time.ZoneId;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;

/** The settings, in one row. */
final class SettingsRows implements Mapping<Settings> {
    private static final Table TABLE =
            Table.of("settings", "id", "zone", "season_start", "temperatures", "lengths", "colours", "daily_care");

    @Override
    public Class<Settings> type() {
        return Settings.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Settings settings, Values row) {
        row.id(settings.id())
                .text(settings.zone().getId())
                .monthDay(settings.seasonStart())
                .word(settings.temperatures())
                .word(settings.lengths())
                .word(settings.colours())
                .flag(settings.dailyCare());
    }

    @Override
    public Settings read(Row row) throws SQLException {
        row.id();
        return new Settings(
                ZoneId.of(row.text()),
                row.monthDay(),
                row.word(TemperatureUnit.class),
                row.word(LengthUnit.class),
                row.word(Colours.class),
                row.flag());
    }
}
