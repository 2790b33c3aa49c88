// SPDX-License-Identifier: Apache-2.0
/**
 * What made a score high or low, where several things varied at once: an additive model with a random effect for each
 * level of each factor, crossed or nested. {@link sillbook.reckon.effects.Design} takes the scores in,
 * {@link sillbook.reckon.effects.Reml} and {@link sillbook.reckon.effects.Averaging} are the two ways out.
 *
 * <p>The equations are Henderson's (C. R. Henderson, Biometrics 31, 1975, 423-447); what they leave unexplained gives
 * the restricted likelihood (H. D. Patterson and R. Thompson, Biometrika 58, 1971, 545-554; the profiled form is in D.
 * Bates, M. Maechler, B. Bolker and S. Walker, Journal of Statistical Software 67(1), 2015). Everything works on counts
 * and sums of the levels, so the work does not grow with the number of records.
 *
 * <p>Limits: effects add up and do not depend on each other; scores are taken as numbers. Numbers in, numbers out: it
 * must not know the journal, a clock, a file or a sentence.
 */
@NullMarked
package sillbook.reckon.effects;

import org.jspecify.annotations.NullMarked;
