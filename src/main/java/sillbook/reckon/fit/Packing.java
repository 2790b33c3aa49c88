// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.util.Collections;
import java.util.List;
import sillbook.reckon.packing.Arrangement;
import sillbook.reckon.packing.Point;
import sillbook.reckon.packing.RoundRoom;

/**
 * Like discs in a room of radius 1, as large as they may be there.
 *
 * @param centres outermost first, clockwise from the top
 * @param ratio of the radius of the room to that of a disc: the smallest room for such discs
 */
public record Packing(List<Point> centres, double ratio) {
    private static final RoundRoom ROOM = new RoundRoom(2);

    public Packing {
        centres = List.copyOf(centres);
        if (!(ratio >= 1)) {
            throw new IllegalArgumentException("a ratio of " + ratio);
        }
    }

    /** With the ratio that the places themselves have. */
    public static Packing of(List<Point> centres) {
        Arrangement unit = new Arrangement(ROOM, Collections.nCopies(centres.size(), 1.0), centres);
        return new Packing(centres, 1 / unit.scale());
    }

    public int count() {
        return centres.size();
    }

    /** Spread until the outermost are so far from the middle; as they are, that is {@code 1 - 1 / ratio}. */
    List<Point> spread(double outermost) {
        if (count() == 1) {
            return List.of(Point.MIDDLE);
        }
        double factor = outermost / (1 - 1 / ratio);
        return centres.stream().map(centre -> centre.times(factor)).toList();
    }
}
