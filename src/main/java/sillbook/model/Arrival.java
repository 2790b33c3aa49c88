// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;

/**
 * How bulbs bought came, beside what was ordered.
 *
 * @param ordered how many were ordered, where another number came
 * @param insteadOf the variety that was ordered, where another was sent
 * @param firm how many were firm; empty when not counted, as the next two
 * @param soft how many were soft
 * @param mouldy how many bore mould
 * @param note in the grower's words; may be empty
 */
public record Arrival(
        Optional<Integer> ordered,
        Optional<Id<Variety>> insteadOf,
        Optional<Integer> firm,
        Optional<Integer> soft,
        Optional<Integer> mouldy,
        String note) {

    /** Nothing is known of it. */
    public static final Arrival NOT_SAID = in("");

    public Arrival {
        ordered.ifPresent(bulbs -> require(bulbs >= 1, bulbs));
        firm.ifPresent(bulbs -> require(bulbs >= 0, bulbs));
        soft.ifPresent(bulbs -> require(bulbs >= 0, bulbs));
        mouldy.ifPresent(bulbs -> require(bulbs >= 0, bulbs));
    }

    private static void require(boolean isRight, int bulbs) {
        if (!isRight) {
            throw new IllegalArgumentException("no such number of bulbs: " + bulbs);
        }
    }

    /** One of which only the grower's words tell. */
    public static Arrival in(String words) {
        return new Arrival(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), words);
    }

    /** Bulbs that are not to be planted. */
    public int unsound() {
        return soft.orElse(0) + mouldy.orElse(0);
    }

    /** All that were counted one by one. */
    int counted() {
        return firm.orElse(0) + unsound();
    }
}
