// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import sillbook.model.Entity;

/**
 * How the entries of one type lie in their table.
 *
 * @param <T> the type
 */
interface Mapping<T extends Entity<T>> {
    Class<T> type();

    Table table();

    /** Writes the entry's own columns. */
    void write(T entity, Values row);

    /** Reads the columns that {@link #write} writes. */
    T read(Row row) throws SQLException;

    /** The table of its parts, when it has any. */
    default Optional<Parts<T, ?>> parts() {
        return Optional.empty();
    }

    /** The values of the entry's row. */
    default @Nullable Object[] row(Entity<?> entity) {
        Values row = new Values(table());
        write(type().cast(entity), row);
        return row.all();
    }

    /** The values of the rows of its parts. */
    default List<@Nullable Object[]> partRows(Entity<?> entity) {
        return parts().map(parts -> parts.rows(type().cast(entity))).orElse(List.of());
    }
}
