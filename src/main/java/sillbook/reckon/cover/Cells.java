// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.SortedSet;

/**
 * The room of a place over time. What stands there on a day all stood there on the last of the days on which any of it came, so that only days on which something may come are looked at; such a day of such a place is a cell.
 * Places that are never full have none.
 */
final class Cells {
    /** A stretch of cells, both ends in; empty where to is before from. */
    record Stretch(int from, int to) {
        static final Stretch NONE = new Stretch(0, -1);
    }

    private final int[][] comings;
    private final int[] offsets;
    private final int[] rooms;

    /** Of places, with the days on which something may come to each, and what stands there in any case; it came on one of these days. */
    Cells(List<Room> places, List<SortedSet<Integer>> comings, List<Load> fixed) {
        this.comings = new int[places.size()][];
        this.offsets = new int[places.size()];
        int cells = 0;
        for (int place = 0; place < offsets.length; place++) {
            boolean isEndless = places.get(place).most().isEmpty();
            this.comings[place] = isEndless
                    ? new int[0]
                    : comings.get(place).stream().mapToInt(day -> day).toArray();
            offsets[place] = cells;
            cells += this.comings[place].length;
        }
        this.rooms = new int[cells];
        for (int place = 0; place < offsets.length; place++) {
            OptionalInt most = places.get(place).most();
            for (int i = 0; i < this.comings[place].length; i++) {
                int taken = fixed.get(place).on(this.comings[place][i]);
                rooms[offsets[place] + i] = Math.max(0, most.orElse(0) - taken);
            }
        }
    }

    /** The cells of a place from a day to a day, both in. */
    Stretch between(int place, int from, int to) {
        int first = index(comings[place], from);
        int beyond = index(comings[place], to + 1);
        return beyond <= first ? Stretch.NONE : new Stretch(offsets[place] + first, offsets[place] + beyond - 1);
    }

    private static int index(int[] days, int day) {
        int found = Arrays.binarySearch(days, day);
        return found >= 0 ? found : -found - 1;
    }

    int count() {
        return rooms.length;
    }

    int room(int cell) {
        return rooms[cell];
    }
}
