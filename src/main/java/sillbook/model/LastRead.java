// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.Instant;

/** The newest reading of a place that is not suspicious, put right for its thermometer. */
public record LastRead(Id<Place> place, Instant at, Temperature temperature) {}
