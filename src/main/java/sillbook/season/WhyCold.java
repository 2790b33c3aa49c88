// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import sillbook.handbook.FigureInForce;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;

/**
 * When a pot whose cold was read will have had its usual weeks, and between which days.
 *
 * @param cold what was had, and how the place has lately been
 * @param potted what has to be had in the pot
 */
public record WhyCold(ColdAhead cold, DayCount potted, List<FigureInForce> figures, Window result)
        implements Why<Window> {
    public WhyCold {
        figures = List.copyOf(figures);
    }

    @Override
    public <T> T fold(Cases<T> cases) {
        return cases.coldEnough(this);
    }

    @Override
    public Window recomputed() {
        return cold.between(potted.typical());
    }

    @Override
    public Set<Lever> levers() {
        return EnumSet.of(Lever.A_READING, Lever.OWN_FIGURE, Lever.A_MOVE);
    }
}
