// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.reckon.cold;

import java.util.Optional;
import sillbook.house.offender.reckon.heat.Warmth;

/** The other half. */
public record Chill(Optional<Warmth> after) {}
