// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import sillbook.model.Entity;

/**
 * How the parts of an entry lie in a table of their own: the entry's id, the part's position, then its columns.
 *
 * @param <T> the type of entry
 * @param <P> the type of part
 */
record Parts<T extends Entity<T>, P>(
        Table table, Function<T, List<P>> of, BiConsumer<P, Values> writing, Row.Reading<P> reading) {

    /** The values of a row for each part. */
    List<@Nullable Object[]> rows(T entity) {
        List<@Nullable Object[]> rows = new ArrayList<>();
        for (P part : of.apply(entity)) {
            Values row = new Values(table).id(entity.id()).number(rows.size());
            writing.accept(part, row);
            rows.add(row.all());
        }
        return rows;
    }
}
