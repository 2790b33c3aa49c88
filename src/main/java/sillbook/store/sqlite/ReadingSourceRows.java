// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.ReadingSource;

/** What readings were taken in from. */
final class ReadingSourceRows implements Mapping<ReadingSource> {
    private static final Table TABLE =
            Table.of("reading_source", "id", "place", "name", "hash", "readings", "suspicious", "first", "last");

    @Override
    public Class<ReadingSource> type() {
        return ReadingSource.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(ReadingSource source, Values row) {
        row.id(source.id())
                .id(source.place())
                .text(source.name())
                .text(source.hash())
                .number(source.readings())
                .number(source.suspicious())
                .instant(source.first())
                .instant(source.last());
    }

    @Override
    public ReadingSource read(Row row) throws SQLException {
        return new ReadingSource(
                row.id(), row.id(), row.text(), row.text(), row.number(), row.number(), row.instant(), row.instant());
    }
}
