// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Optional;

/**
 * The cold that bulbs had dry, before they were potted.
 *
 * @param beforeTheyCame days, as the packet or the seller says; empty when nobody knows
 * @param atTheirPlace days since they came on which the place they wait at was cold. That they stood there all the time
 *     is taken for granted: a purchase has a place, and no history of places
 */
public record DryCold(Optional<Integer> beforeTheyCame, int atTheirPlace) {
    static final DryCold UNKNOWN = new DryCold(Optional.empty(), 0);

    public DryCold {
        if (atTheirPlace < 0 || beforeTheyCame.filter(days -> days < 0).isPresent()) {
            throw new IllegalArgumentException("no days of dry cold: " + beforeTheyCame + ", " + atTheirPlace);
        }
    }

    /** All of it, as far as it is known. */
    public int days() {
        return beforeTheyCame.orElse(0) + atTheirPlace;
    }

    boolean isKnown() {
        return beforeTheyCame.isPresent() || atTheirPlace > 0;
    }
}
