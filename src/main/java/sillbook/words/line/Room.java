// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;

/**
 * What stands at a place, and how much finds room there.
 *
 * @param pots those that stand there
 * @param room how many find room; empty when nobody said
 */
record Room(List<Id<Pot>> pots, Optional<Integer> room) {
    Room {
        pots = List.copyOf(pots);
    }

    /** {@code 6 of 9 stand there}. */
    String says() {
        String all = room.map(most -> " of " + most).orElse("");
        return pots.size() + all + (pots.size() == 1 ? " stands there" : " stand there");
    }

    /** How many more find room; more than anyone has when nobody said. */
    int left() {
        return room.map(most -> Math.max(0, most - pots.size())).orElse(Integer.MAX_VALUE);
    }

    /** {@code room for 3, not 6}; empty when all find room. */
    String tooMany(int coming) {
        if (left() >= coming) {
            return "";
        }
        return left() == 0 ? "no room left" : "room for " + left() + ", not " + coming;
    }

    /** How many of these pots would come to it, not standing there yet. */
    int coming(Collection<Id<Pot>> moving) {
        return (int) moving.stream().filter(pot -> !pots.contains(pot)).count();
    }
}
