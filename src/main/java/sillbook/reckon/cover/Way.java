// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.OptionalInt;
import sillbook.reckon.cover.Cells.Stretch;

/**
 * One way to bring in a pot of a kind.
 *
 * @param number among all ways
 * @param cold the cold place it stood in, -1 where it needs none
 * @param first in bloom, of the days of the season
 * @param last in bloom, of the days of the season
 * @param warm cells of its site while it stands there
 * @param chilled cells of the cold place while it stands there
 */
record Way(
        int number,
        int kind,
        int pull,
        int site,
        int cold,
        int first,
        int last,
        int takes,
        Stretch warm,
        Stretch chilled) {
    int length() {
        return last - first + 1;
    }

    boolean isInBloom(int day) {
        return first <= day && day <= last;
    }

    /** Adds what it takes to the cells it stands in. */
    void stand(int[] load) {
        for (int cell = warm.from(); cell <= warm.to(); cell++) {
            load[cell] += takes;
        }
        for (int cell = chilled.from(); cell <= chilled.to(); cell++) {
            load[cell] += takes;
        }
    }

    boolean fits(int[] load, Cells cells) {
        return fits(warm, load, cells) && fits(chilled, load, cells);
    }

    private boolean fits(Stretch stretch, int[] load, Cells cells) {
        for (int cell = stretch.from(); cell <= stretch.to(); cell++) {
            if (load[cell] + takes > cells.room(cell)) {
                return false;
            }
        }
        return true;
    }

    Pull of(int group) {
        return new Pull(group, pull, site, cold < 0 ? OptionalInt.empty() : OptionalInt.of(cold));
    }
}
