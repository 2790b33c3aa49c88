// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Intention;

/** What is meant to be done with pots. */
final class IntentionRows implements Mapping<Intention> {
    private static final Table TABLE =
            Table.of("intention", "id", "pot", "season_plan", "potting", "cold", "brought_in", "room");

    @Override
    public Class<Intention> type() {
        return Intention.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Intention meant, Values row) {
        row.id(meant.id()).id(meant.pot()).id(meant.plan());
        SeasonPlanRows.write(meant.course(), row);
    }

    @Override
    public Intention read(Row row) throws SQLException {
        return new Intention(row.id(), row.id(), row.id(), SeasonPlanRows.course(row));
    }
}
