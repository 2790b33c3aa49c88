// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Place;

/** Where a pot stands, and since when. */
public record Stay(Id<Place> place, Day since) {}
