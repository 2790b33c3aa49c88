// SPDX-License-Identifier: Apache-2.0
/**
 * What the journal says: its kinds, varieties, purchases, pots, places, events and outcomes, as values.
 *
 * <p>It must not know how they are kept, worked out, said or shown; it holds no clock, no figure of the handbook and
 * no rule of the trade beyond what makes an entry possible at all.
 */
@NullMarked
package sillbook.model;

import org.jspecify.annotations.NullMarked;
