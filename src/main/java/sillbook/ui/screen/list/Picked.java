// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.ui.screen.State;

/** How many pots are picked, as the foot rule says it. */
public final class Picked {
    private Picked() {}

    /** {@code 3 picked, 1 not shown here; 1-17 of 27}: before the place in the list; nothing more where none is picked. */
    public static String before(String place, State state, Rows rows) {
        Set<Id<Pot>> picked = state.picked();
        if (picked.isEmpty()) {
            return place;
        }
        Set<Id<Pot>> shown = pots(rows).stream().collect(Collectors.toSet());
        long hidden = picked.stream().filter(pot -> !shown.contains(pot)).count();
        String notHere = hidden == 0 ? "" : ", " + hidden + " not shown here";
        return picked.size() + " picked" + notHere + "; " + place;
    }

    /** The pots of a list. */
    public static List<Id<Pot>> pots(Rows rows) {
        return rows.things().stream()
                .flatMap(thing -> thing.asPots().stream())
                .flatMap(some -> some.pots().stream())
                .distinct()
                .toList();
    }
}
