// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import sillbook.reckon.dates.Window;

/**
 * A sign to come of a pot that was brought in, before its flower or soon after it.
 *
 * @param window of which the likely day does not lie behind
 * @param length what it rests on
 */
public record SignAhead(PlantSpan sign, Window window, LengthGiven length) {}
