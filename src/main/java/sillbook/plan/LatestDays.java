// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Variety;

/**
 * Worked back from a wish, with the usual lengths.
 *
 * @param variety whose days they are: of those that suit the one that can be potted last
 * @param orderBy so that the bulbs are here in time; empty of bulbs that are ordered, or here
 * @param potBy the last day of potting
 * @param bringInBy the last day of bringing in
 */
public record LatestDays(Id<Variety> variety, Optional<LocalDate> orderBy, LocalDate potBy, LocalDate bringInBy) {}
