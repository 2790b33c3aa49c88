// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The cold a pot has had: by the thermometers of its places, else by the days on which these are cold.
 *
 * @param began the first day it was potted, watered and standing where it is cold
 * @param stretches the days in the cold stage since it was potted, place by place, up to but not with today. A pot whose potting nobody wrote was
 *     potted when it came to stand somewhere
 * @param reached of a pot whose cold was read: on which day each whole day of it was had, the first first
 * @param dryDays days its bulbs had dry before potting; empty when nobody knows. Of several plantings the least
 */
public record ColdTime(
        Optional<LocalDate> began, List<ColdStretch> stretches, List<LocalDate> reached, Optional<Integer> dryDays) {
    public ColdTime {
        stretches = List.copyOf(stretches);
        reached = List.copyOf(reached);
    }

    /** All of it, and what of it counts. */
    public ColdCount count() {
        return ColdCount.of(stretches);
    }

    public int daysIn() {
        return count().daysIn();
    }

    /** The days that count, whole ones. */
    public int daysColdEnough() {
        return count().daysColdEnough();
    }
}
