// SPDX-License-Identifier: Apache-2.0
/**
 * Files to values and back: the JSON that commands answer with, tables that come from spreadsheets, and the
 * demo's lines made into a journal.
 *
 * <p>The only place with Jackson. It must not know a clock, the standard streams, how a journal is kept or how anything
 * looks on a screen; what is true it asks of {@code season}, how it is said of {@code words}.
 */
@NullMarked
package sillbook.exchange;

import org.jspecify.annotations.NullMarked;
