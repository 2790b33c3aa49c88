// SPDX-License-Identifier: Apache-2.0
/**
 * How many bulbs fit a pot and where they sit, how much potting mix it takes. {@link sillbook.reckon.fit.Bed} is a round layer of like bulbs, {@link sillbook.reckon.fit.Mixture} one of several sizes, {@link sillbook.reckon.fit.Layers} are two over each
 * other; {@link sillbook.reckon.fit.Spacing} is how far apart they stand, {@link sillbook.reckon.fit.Suggestion} what is usual before what is possible. {@link sillbook.reckon.fit.Frustum} is the inside of a pot.
 *
 * <p>Like circles in a circle: the best known ratios to 30 are those of R. L. Graham, B. D. Lubachevsky, K. J. Nurmela and P. R. J. Östergård, Dense packings of congruent circles in a circle, Discrete Mathematics 181, 1998. The places are found by a search of our
 * own and lie beside the class {@link sillbook.reckon.fit.Packings} as data; beyond 30 a lattice gives a count that is possible, not the most.
 *
 * <p>Bulbs are taken for balls as wide as their grade, a circumference, says; a real bulb is rounder at one side, flatter at another, and taller than wide. Numbers in, numbers out, in centimetres, cubic centimetres and radians: it must not know the
 * journal, a kind of bulb, a clock or a sentence.
 */
@NullMarked
package sillbook.reckon.fit;

import org.jspecify.annotations.NullMarked;
