// SPDX-License-Identifier: Apache-2.0
/**
 * From the journal to what is true now: where every pot stands, what is due and why, what is to come.
 *
 * <p>Values in, values out. Today is always handed in. It must not know the clock, storage, screens or sentences: what
 * is found here is said elsewhere.
 */
@NullMarked
package sillbook.season;

import org.jspecify.annotations.NullMarked;
