// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.PastWindows;

/** How true the windows before a season were. */
final class PastWindowsRows implements Mapping<PastWindows> {
    private static final Table TABLE = Table.of("past_windows", "id", "season", "held", "windows", "reach");

    @Override
    public Class<PastWindows> type() {
        return PastWindows.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(PastWindows windows, Values row) {
        row.id(windows.id())
                .season(windows.season())
                .number(windows.held())
                .number(windows.of())
                .number(windows.reach());
    }

    @Override
    public PastWindows read(Row row) throws SQLException {
        return new PastWindows(row.id(), row.season(), row.number(), row.number(), row.number());
    }
}
