// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.SpotReading;

/** Temperatures at an instant, typed by hand. */
final class SpotReadingRows implements Mapping<SpotReading> {
    private static final Table TABLE =
            Table.of("spot_reading", "id", "place", "at", "temperature", "temperature_written");

    @Override
    public Class<SpotReading> type() {
        return SpotReading.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(SpotReading reading, Values row) {
        row.id(reading.id()).id(reading.place()).instant(reading.at()).temperature(reading.temperature());
    }

    @Override
    public SpotReading read(Row row) throws SQLException {
        return new SpotReading(row.id(), row.id(), row.instant(), row.temperature());
    }
}
