// SPDX-License-Identifier: Apache-2.0
/**
 * Lists that come from elsewhere: the rows of a table, read as varieties or as purchases. Each row is read against the
 * journal as the rows before it leave it, and said back before anything is written: new, the same, changed or wrong.
 * {@link sillbook.words.list.ListReading} is the door.
 *
 * <p>Each sort of list is a table of columns, declared once; header, cells, what is said back and the documentation's page of columns
 * go by it. Must not know what sort of file the table came from.
 */
@NullMarked
package sillbook.words.list;

import org.jspecify.annotations.NullMarked;
