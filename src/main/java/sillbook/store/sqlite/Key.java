// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.Optional;
import sillbook.model.Entity;

/** Which row an entry has. */
record Key(Mapping<?> mapping, String id) {
    static Key of(Entity<?> entity) {
        return new Key(Mappings.of(entity), entity.id().toString());
    }

    Table table() {
        return mapping.table();
    }

    Optional<Table> partTable() {
        return mapping.parts().map(Parts::table);
    }
}
