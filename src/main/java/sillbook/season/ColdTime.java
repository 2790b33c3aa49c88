// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The cold a pot has had, by the calendar: the days it stood in the cold, and of these the days on which its place is
 * cold.
 *
 * @param began the first day it was potted, watered and standing where it is cold
 * @param daysIn days in the cold stage since it was potted, up to but not with today
 * @param daysColdEnough of those, the days that count
 * @param dryDays days its bulbs had dry before potting; empty when nobody knows. Of several plantings the least
 */
public record ColdTime(Optional<LocalDate> began, int daysIn, int daysColdEnough, Optional<Integer> dryDays) {
    public ColdTime {
        if (daysColdEnough > daysIn || daysColdEnough < 0) {
            throw new IllegalArgumentException(daysColdEnough + " cold days of " + daysIn);
        }
    }
}
