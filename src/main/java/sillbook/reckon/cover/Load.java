// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How much is taken of a place over time, in units of a pot's {@link PotGroup#takes()}; nothing before and after.
 *
 * @param first the day of the first number
 * @param units a number for each day
 */
public record Load(int first, List<Integer> units) {
    public Load {
        units = List.copyOf(units);
    }

    /** What is taken on a day. */
    public int on(int day) {
        return day < first || day - first >= units.size() ? 0 : units.get(day - first);
    }

    /** The days on which more is taken than there is, in order. */
    public List<Integer> beyond(Room room) {
        return room.most().isEmpty()
                ? List.of()
                : days().filter(day -> on(day) > room.most().getAsInt()).boxed().toList();
    }

    /** The days on which more is taken than on the day before. */
    IntStream rises() {
        return days().filter(day -> on(day) > on(day - 1));
    }

    private IntStream days() {
        return IntStream.range(first, first + units.size());
    }
}
