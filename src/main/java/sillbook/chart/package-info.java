// SPDX-License-Identifier: Apache-2.0
/**
 * Drawings as numbers: the season ruler, pot lines, the sill, scales and ticks. Terminal cells and SVG are drawn from the same ones. Must
 * not know the journal, any sign or colour, or where it is shown.
 */
@NullMarked
package sillbook.chart;

import org.jspecify.annotations.NullMarked;
