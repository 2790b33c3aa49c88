// SPDX-License-Identifier: Apache-2.0
/**
 * How sure a plan is whose lengths are not: the chance that something is in bloom on a day ({@link sillbook.reckon.chance.Covering}), and how many pots a wish for a day calls for ({@link sillbook.reckon.chance.Spares}). Chances are
 * summed over all days that can be, never drawn.
 *
 * <p>Limits: pots are taken to be early or late each by itself. Those of one room share its weather, so that together they are a little less sure than they come out here. Numbers in, numbers out: it must not know the journal, the
 * handbook, a clock, a file or a sentence.
 */
@NullMarked
package sillbook.reckon.chance;

import org.jspecify.annotations.NullMarked;
