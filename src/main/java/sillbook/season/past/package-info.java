// SPDX-License-Identifier: Apache-2.0
/**
 * What the winters so far teach: how each did, what did well in them, and what to choose for the next.
 *
 * <p>Readings of a journal like the rest of {@code season}: values in, values out. It must not know the clock, storage, screens
 * or sentences.
 */
@NullMarked
package sillbook.season.past;

import org.jspecify.annotations.NullMarked;
