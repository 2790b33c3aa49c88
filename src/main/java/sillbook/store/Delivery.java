// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import sillbook.model.Id;
import sillbook.model.Place;

/**
 * Readings to be taken in for a place.
 *
 * @param name what their source is called
 * @param original its bytes
 * @param feed what was read from them; it is gone through once
 */
public record Delivery(Id<Place> place, String name, Original original, Feed feed) {}
