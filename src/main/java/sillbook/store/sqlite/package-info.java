// SPDX-License-Identifier: Apache-2.0
/**
 * Journals as SQLite files: the schema and its migrations, reading and writing entries, the log of steps, copies and
 * checks.
 *
 * <p>The only package that knows JDBC. Statements longer than a line lie in {@code .sql} files, or are made by
 * {@link sillbook.store.sqlite.Table} from the names of its columns; every value is bound. It must not know the clock,
 * the rules of the trade, or anything of screens.
 */
@NullMarked
package sillbook.store.sqlite;

import org.jspecify.annotations.NullMarked;
