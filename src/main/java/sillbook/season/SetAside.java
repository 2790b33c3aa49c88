// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import sillbook.handbook.FigureInForce;
import sillbook.model.OwnFigure;

/**
 * That what own pots taught does not hold, because the handbook's was asked for.
 *
 * @param asked the entries that ask for it, at least one; without them what was learnt holds again
 * @param holds what holds instead
 */
public record SetAside(List<OwnFigure> asked, FigureInForce holds) {
    public SetAside {
        asked = List.copyOf(asked);
    }
}
