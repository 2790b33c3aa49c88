// SPDX-License-Identifier: Apache-2.0
/**
 * The days on which a pot's stages begin: forward from the day it was potted, put in the cold or brought out, backward
 * from a wished day of flower. {@link sillbook.reckon.dates.Schedule} is the door.
 *
 * <p>Whole days only, and windows that are sums of published lows and highs: a range, never a probability. Numbers in,
 * numbers out: it must not know the journal, the handbook, a clock, a file or a sentence.
 */
@NullMarked
package sillbook.reckon.dates;

import org.jspecify.annotations.NullMarked;
