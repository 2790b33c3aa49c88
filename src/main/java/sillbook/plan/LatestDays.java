// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;

/**
 * Worked back from a wish, with the usual lengths.
 *
 * @param orderBy so that the bulbs are here in time
 * @param potBy the last day of potting
 * @param bringInBy the last day of bringing in
 */
public record LatestDays(LocalDate orderBy, LocalDate potBy, LocalDate bringInBy) {}
