// SPDX-License-Identifier: Apache-2.0
/**
 * How long a stage lasts, when something is known of it: three published points as a distribution, own days that move
 * it, stages added up, and the day on which the sum is reached. {@link sillbook.reckon.stages.NormalInverseGamma} is
 * where the own days come in, {@link sillbook.reckon.stages.Regression} the same given the conditions, {@link sillbook.reckon.stages.DayChances} where stages are added up.
 *
 * <p>Numbers in, numbers out, in days: it must not know the journal, the handbook, a clock, a file or a sentence. Unlike
 * the windows of {@code reckon.dates}, which are sums of published lows and highs, what comes out here is a probability.
 */
@NullMarked
package sillbook.reckon.stages;

import org.jspecify.annotations.NullMarked;
