// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The cold a pot has had: by the thermometers of its places, else by the days on which these are cold.
 *
 * @param began the first day it was potted, watered and standing where it is cold
 * @param count days in the cold stage since it was potted, up to but not with today, and what of them counts
 * @param reached of a pot whose cold was read: on which day each whole day of it was had, the first first
 * @param dryDays days its bulbs had dry before potting; empty when nobody knows. Of several plantings the least
 */
public record ColdTime(Optional<LocalDate> began, ColdCount count, List<LocalDate> reached, Optional<Integer> dryDays) {
    public ColdTime {
        reached = List.copyOf(reached);
    }

    public int daysIn() {
        return count.daysIn();
    }

    /** The days that count, whole ones. */
    public int daysColdEnough() {
        return count.daysColdEnough();
    }
}
