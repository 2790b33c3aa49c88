// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.reckon.heat;

import sillbook.house.offender.reckon.cold.Chill;

/** Half of a circle. */
public record Warmth(Chill before) {}
