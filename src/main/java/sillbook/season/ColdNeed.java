// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Optional;
import sillbook.reckon.dates.DayCount;

/**
 * The cold a pot needs.
 *
 * @param whole what its varieties share, dry cold included
 * @param potted what has to follow potting, after the dry cold that counts
 */
public record ColdNeed(DayCount whole, DayCount potted) {

    /** What these bulbs need together; empty when none of them needs any. */
    static Optional<ColdNeed> of(List<Prospect.Share> shares) {
        Optional<DayCount> whole =
                shares.stream().flatMap(share -> share.need().cold().stream()).findFirst();
        return whole.flatMap(cold -> potted(shares).map(potted -> new ColdNeed(cold, potted)));
    }

    /** The neediest have enough, and none has too much where that can be. */
    static Optional<DayCount> potted(List<Prospect.Share> shares) {
        return shares.stream().flatMap(share -> share.pottedCold().stream()).reduce(ColdNeed::both);
    }

    private static DayCount both(DayCount one, DayCount other) {
        int typical = Math.max(one.typical(), other.typical());
        int high = Math.max(typical, Math.min(one.high(), other.high()));
        return DayCount.of(Math.max(one.low(), other.low()), typical, high);
    }

    /** Days of dry cold that are taken off. */
    public int credited() {
        return whole.typical() - potted.typical();
    }
}
