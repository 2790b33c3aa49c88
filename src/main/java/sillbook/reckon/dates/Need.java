// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.util.Optional;

/**
 * What a sort of bulb needs, in days.
 *
 * @param cold the whole cold, weeks already had dry included; empty for a kind that needs none
 * @param coldLimit the whole cold it can bear before a wait in the cold is no longer advised; empty when not known, and
 *     then nothing past the longest cold is foretold
 * @param afterCold from the end of the cold (or from potting, where no cold is needed) to the first flower
 * @param coolRoom what the cool room takes of that, first; the warm room has the rest. Empty where no cool room is used
 * @param inBloom from first flower to past bloom; empty when not known
 * @param bloomAhead the same of a flower that is still to come, where it is known how likely each length is: two lengths
 *     are rarely both short or both long, so their sum is not as doubtful as both are together. Empty where they are
 *     ranges, whose ends are added up
 */
public record Need(
        Optional<DayCount> cold,
        Optional<Integer> coldLimit,
        DayCount afterCold,
        Optional<DayCount> coolRoom,
        Optional<DayCount> inBloom,
        Optional<DayCount> bloomAhead) {

    public Need {
        if (cold.isEmpty() && coldLimit.isPresent()) {
            throw new IllegalArgumentException("a limit of cold for a kind that needs none");
        }
    }

    /** Lengths of which only the ranges are known. */
    public Need(
            Optional<DayCount> cold,
            Optional<Integer> coldLimit,
            DayCount afterCold,
            Optional<DayCount> coolRoom,
            Optional<DayCount> inBloom) {
        this(cold, coldLimit, afterCold, coolRoom, inBloom, Optional.empty());
    }

    /** A kind that needs cold; its other lengths unknown or not used. */
    public static Need ofCold(DayCount cold, DayCount afterCold) {
        return new Need(Optional.of(cold), Optional.empty(), afterCold, Optional.empty(), Optional.empty());
    }

    /** A kind that needs no cold; its other lengths unknown or not used. */
    public static Need withoutCold(DayCount toBloom) {
        return new Need(Optional.empty(), Optional.empty(), toBloom, Optional.empty(), Optional.empty());
    }

    /** What the cool room takes of the days after the cold, so that a rest is left for the warm one. */
    DayCount coolShare() {
        return coolRoom.orElse(DayCount.ZERO).partOf(afterCold);
    }

    /**
     * What of the cool room's days is had when a pot enters the warm room: no more than it stood outside the cold
     * before. The weeks to the first flower are published from the end of the cold, and are no fewer where pots go
     * straight to 16 to 18 C (2 to 4 weeks: IFBC, daffodils in boxes; 21 to 30 days: Rees and Hanks 1984) than where a
     * cool room comes first (2 to 3: Missouri Botanical Garden; 3 to 4: Iowa State University 2015).
     *
     * <p>Of a range its ends are taken off each other; where lengths are chances, the days that were had are a fact, and
     * leave the doubt as wide as it is.
     */
    public DayCount coolHad(Facts facts) {
        return facts.daysBeforeWarmth(cold.isPresent()).map(this::coolHad).orElseGet(this::coolShare);
    }

    private DayCount coolHad(int daysBefore) {
        DayCount share = coolShare();
        if (bloomAhead.isPresent()) {
            return DayCount.of(Math.min(Math.min(daysBefore, share.typical()), afterCold.low()));
        }
        return share.atMost(DayCount.of(Math.min(daysBefore, DayCount.LONGEST)));
    }

    public Need withCold(DayCount given) {
        return new Need(Optional.of(given), coldLimit, afterCold, coolRoom, inBloom, bloomAhead);
    }

    public Need withColdLimit(int days) {
        return new Need(cold, Optional.of(days), afterCold, coolRoom, inBloom, bloomAhead);
    }

    public Need withCoolRoom(DayCount given) {
        return new Need(cold, coldLimit, afterCold, Optional.of(given), inBloom, bloomAhead);
    }

    public Need withBloomAhead(DayCount given) {
        return new Need(cold, coldLimit, afterCold, coolRoom, inBloom, Optional.of(given));
    }

    public Need withInBloom(DayCount given) {
        return new Need(cold, coldLimit, afterCold, coolRoom, Optional.of(given), bloomAhead);
    }
}
