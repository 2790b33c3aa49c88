// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;

/**
 * Where a pot could go.
 *
 * @param left how many more pots find room there; empty when its room is not known
 */
public record Destination(Id<Place> place, Optional<Integer> left) {}
