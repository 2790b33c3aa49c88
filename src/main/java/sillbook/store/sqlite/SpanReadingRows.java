// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Band;
import sillbook.model.SpanReading;

/** Lowest and highest temperatures between two days. */
final class SpanReadingRows implements Mapping<SpanReading> {
    private static final Table TABLE = Table.of(
            "span_reading",
            "id",
            "place",
            "reset",
            "reset_earliest",
            "reset_latest",
            "read",
            "read_earliest",
            "read_latest",
            "low",
            "low_written",
            "high",
            "high_written");

    @Override
    public Class<SpanReading> type() {
        return SpanReading.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(SpanReading reading, Values row) {
        row.id(reading.id())
                .id(reading.place())
                .day(reading.from())
                .day(reading.to())
                .temperature(reading.between().low())
                .temperature(reading.between().high());
    }

    @Override
    public SpanReading read(Row row) throws SQLException {
        return new SpanReading(
                row.id(), row.id(), row.day(), row.day(), new Band(row.temperature(), row.temperature()));
    }
}
