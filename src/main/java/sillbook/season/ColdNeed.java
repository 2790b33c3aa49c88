// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import sillbook.reckon.dates.DayCount;

/**
 * The cold a pot needs.
 *
 * @param whole what its varieties share, dry cold included
 * @param potted what has to follow potting, after the dry cold that counts
 */
public record ColdNeed(DayCount whole, DayCount potted) {

    /** Days of dry cold that are taken off. */
    public int credited() {
        return whole.typical() - potted.typical();
    }
}
