// SPDX-License-Identifier: Apache-2.0
/**
 * How many round pots stand on a shelf, and whether they go on finding room. {@link sillbook.reckon.shelf.Shelf} holds like pots side by side, {@link sillbook.reckon.shelf.Headroom} is what is over them, {@link sillbook.reckon.shelf.Stays} are pots that come and go and keep
 * their place meanwhile.
 *
 * <p>Side by side: two bounds say how many there can be, N. Oler, Acta Mathematica 105, 1961, and a count of cells; what stands is the best of three regular patterns and a search. Over time: keeping places is storage allocation, which is as hard as
 * any such question (M. R. Garey and D. S. Johnson, Computers and Intractability, 1979, problem SR2), so that it is answered exactly for few pots and by bounds for many; the need is at least the load and at most three times it (J. Gergov, 1999).
 *
 * <p>Numbers in, numbers out, in centimetres, whole days and whole units of width: it must not know the journal, a place, a clock or a sentence.
 */
@NullMarked
package sillbook.reckon.shelf;

import org.jspecify.annotations.NullMarked;
