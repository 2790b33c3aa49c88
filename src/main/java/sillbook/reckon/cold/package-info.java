// SPDX-License-Identifier: Apache-2.0
/**
 * Cold added up: how much of a stay counts, from what a thermometer read. {@link sillbook.reckon.cold.ColdWeight} says what an hour at a temperature is worth,
 * {@link sillbook.reckon.cold.Trace} is for readings one after another, {@link sillbook.reckon.cold.DayTrace} for days known by lowest and highest, {@link
 * sillbook.reckon.cold.SpanTrace} for spans of which only the two ends are known.
 *
 * <p>What counts: most spring bulbs need several weeks at 4 to 9 C (A. Khodorova and M. Boitel-Conti, Plants 2, 2013), handbooks count weeks at 9 C and, later on, near freezing; the cold a bulb has had is reported not to be
 * undone by warmth (Acta Horticulturae 47, 1975), so nothing is ever taken off. Where exactly the ends lie is a judgement of ours.
 *
 * <p>Limits: a place's air is not a pot's soil. Numbers in, numbers out, in degrees Celsius and hours: it must not know the journal, a clock, a file or a sentence.
 */
@NullMarked
package sillbook.reckon.cold;

import org.jspecify.annotations.NullMarked;
