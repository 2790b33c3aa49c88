// SPDX-License-Identifier: Apache-2.0
/**
 * What the application asks of the place where a journal is kept, and the ways that can fail.
 *
 * <p>It must not know how a journal is kept: no database, no file format. {@link sillbook.store.Storage} opens and
 * begins journals, {@link sillbook.store.Store} is one open journal.
 */
@NullMarked
package sillbook.store;

import org.jspecify.annotations.NullMarked;
