// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.List;

/**
 * Makes a write fail that an act comes to. Triggers that only this connection has, and that leave no trace in the file,
 * count every row that is written, and refuse from one on.
 */
final class RowFault {
    private static final String NEVER = "9223372036854775807";

    private final Database database;

    private RowFault(Database database) {
        this.database = database;
    }

    static RowFault of(Database database) {
        database.run("CREATE TEMP TABLE fault (written INTEGER NOT NULL, refused_from INTEGER NOT NULL)");
        database.run("INSERT INTO temp.fault VALUES (0, " + NEVER + ")");
        List<String> tables = database.list(
                "SELECT name FROM main.sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite@_%' ESCAPE '@'",
                row -> row.text());
        for (String table : tables) {
            for (String write : List.of("INSERT", "UPDATE", "DELETE")) {
                database.run(
                        "CREATE TEMP TRIGGER fault_" + write + "_" + table + " BEFORE " + write + " ON main." + table
                                + " BEGIN"
                                + " UPDATE fault SET written = written + 1;"
                                + " SELECT RAISE(ABORT, 'no more can be written') FROM fault WHERE written >= refused_from;"
                                + " END");
            }
        }
        return new RowFault(database);
    }

    /** From now on the nth row, and all that come after it, cannot be written. */
    void failFrom(int nth) {
        database.run("UPDATE temp.fault SET written = 0, refused_from = " + nth);
    }

    void mend() {
        database.run("UPDATE temp.fault SET written = 0, refused_from = " + NEVER);
    }
}
