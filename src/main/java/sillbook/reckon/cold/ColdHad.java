// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.util.List;
import java.util.Optional;

/**
 * The cold of a stretch of time, in hours.
 *
 * @param readings how many it is known by
 * @param hours from the first to the last
 * @param effective by weight, without gaps that are too long to be bridged
 * @param bridged the same with them, as if nothing had happened there; empty where no such gap is bridged in thought
 * @param counted the strict count: above 0 and up to 9 C, without the gaps
 * @param tally how many of the readings are above 0 and up to 9 C
 * @param chilling from 0 to 7.2 C, without the gaps (J. H. Weinberger, 1950)
 * @param freezing below 0 C, without the gaps
 * @param unaccounted in the gaps
 */
public record ColdHad(
        int readings,
        double hours,
        double effective,
        Optional<Double> bridged,
        double counted,
        int tally,
        double chilling,
        double freezing,
        List<WarmSpell> warmSpells,
        double unaccounted) {
    /** Hours in a week of cold. */
    public static final double WEEK = 168;

    static final double CHILLING = 7.2;

    public ColdHad {
        warmSpells = List.copyOf(warmSpells);
    }

    /** Effective weeks. */
    public double weeks() {
        return effective / WEEK;
    }
}
