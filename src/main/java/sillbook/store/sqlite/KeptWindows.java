// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.model.Stage;

/** The windows kept with steps. They count while their step is in force, and go when it is gone for good. */
final class KeptWindows {
    private static final String KEEP = Sql.file("queries/keep-window.sql");
    private static final String OF_POT = Sql.file("queries/kept-windows.sql");

    private static final String ALL = Sql.file("queries/all-kept-windows.sql");

    private final Database database;

    KeptWindows(Database database) {
        this.database = database;
    }

    void keep(long step, List<KeptWindow> windows) {
        windows.forEach(window -> keep(step, window));
    }

    /** Those a journal begins with; no step can take them away. */
    void keepFromTheFirst(List<KeptWindow> windows) {
        windows.forEach(window -> keep(null, window));
    }

    private void keep(@Nullable Long step, KeptWindow window) {
        database.update(
                KEEP,
                step,
                window.pot().toString(),
                window.stage().name(),
                window.madeOn().toString(),
                window.earliest().toString(),
                window.likely().toString(),
                window.latest().toString(),
                window.basis());
    }

    List<KeptWindow> of(Id<Pot> pot) {
        return database.list(OF_POT, KeptWindows::read, pot.toString());
    }

    List<KeptWindow> all() {
        return database.list(ALL, KeptWindows::read);
    }

    private static KeptWindow read(Row row) throws SQLException {
        return new KeptWindow(
                row.id(), row.word(Stage.class), row.date(), row.date(), row.date(), row.date(), row.text());
    }
}
