// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import sillbook.app.DayReckoning;
import sillbook.store.Storage;
import sillbook.store.StorageContract;

/** The contract, over real files. */
class SqliteStorageTest extends StorageContract {
    @Override
    protected Storage storage() {
        return new SqliteStorage(folder.resolve("cache"), new DayReckoning());
    }
}
