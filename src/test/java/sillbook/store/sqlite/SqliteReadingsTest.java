// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import sillbook.store.ReadingsContract;
import sillbook.store.Storage;

class SqliteReadingsTest extends ReadingsContract {
    @Override
    protected Storage storage() {
        return Journals.STORAGE;
    }
}
