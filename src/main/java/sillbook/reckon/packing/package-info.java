// SPDX-License-Identifier: Apache-2.0
/**
 * Discs beside each other without overlap in a round or an oblong room: the one search behind bulbs in a pot and pots on a shelf. A {@link sillbook.reckon.packing.Room} holds the centres, {@link
 * sillbook.reckon.packing.Scatter} pushes discs apart from scattered places until none overlaps, an {@link sillbook.reckon.packing.Arrangement} is what came of it and knows by its own places how large the discs may be.
 *
 * <p>Discs here touch each other and the wall. A gap is brought in by who asks: discs wider by the gap, in a room that is wider by it, too.
 *
 * <p>Numbers in, numbers out, in any one unit of length. What is found is a lower bound, never a proof; {@link sillbook.reckon.packing.Oler} is one above. It must not know what the discs are.
 */
@NullMarked
package sillbook.reckon.packing;

import org.jspecify.annotations.NullMarked;
