// SPDX-License-Identifier: Apache-2.0
/**
 * How cold it is in the ground: the yearly wave of the surface, damped and late at a depth. {@link sillbook.reckon.soil.YearlyWave} is fitted to mean temperatures of months, {@link
 * sillbook.reckon.soil.Ground} says how fast it dies away, {@link sillbook.reckon.soil.Mulch} lies on top, {@link sillbook.reckon.soil.FrostChance} adds cold spells.
 *
 * <p>The damped wave is in D. Hillel, Introduction to Soil Physics, 1982, and G. S. Campbell and J. M. Norman, An Introduction to Environmental Biophysics, 1998; the properties of soils in A. F. Moene and J. C. van
 * Dam, Transport in the Atmosphere-Vegetation-Soil Continuum, 2014, table 2.2.
 *
 * <p>Limits: air is not the surface of the soil, months have less swing than days, and no heat of freezing is reckoned with, so that moist soil freezes later than is said here. Numbers in, numbers out, in degrees Celsius, metres
 * and days: it must not know the journal, a clock, a file or a sentence.
 */
@NullMarked
package sillbook.reckon.soil;

import org.jspecify.annotations.NullMarked;
