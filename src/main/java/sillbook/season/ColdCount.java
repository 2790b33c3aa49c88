// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;

/**
 * Days in the cold, and of these the days that count.
 *
 * @param daysIn from potting on, today not counted
 */
public record ColdCount(int daysIn, int daysColdEnough) {
    static ColdCount of(List<ColdStretch> stretches) {
        return new ColdCount(
                stretches.stream().mapToInt(ColdStretch::daysIn).sum(),
                stretches.stream().mapToInt(ColdStretch::daysColdEnough).sum());
    }
}
