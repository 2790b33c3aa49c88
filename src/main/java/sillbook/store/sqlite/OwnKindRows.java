// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.OwnKind;

/** The kinds the grower added. */
final class OwnKindRows implements Mapping<OwnKind> {
    private static final Table TABLE = Table.of("own_kind", "id", "name", "letter", "like_kind", "like_group");

    @Override
    public Class<OwnKind> type() {
        return OwnKind.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(OwnKind kind, Values row) {
        row.id(kind.id()).text(kind.name()).text(kind.letter()).optionalKind(kind.like());
    }

    @Override
    public OwnKind read(Row row) throws SQLException {
        return new OwnKind(row.id(), row.text(), row.text(), row.optionalKind());
    }
}
