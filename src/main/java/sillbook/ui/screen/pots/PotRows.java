// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pots;

import java.util.List;
import sillbook.season.PotLine;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotRow;

/** The lines of the page of pots. */
record PotRows(State state, PotOrder order) {

    Rows rows() {
        List<PotLine> lines =
                order.sort(state, state.almanac().lines(state.timescale().season()));
        if (lines.isEmpty()) {
            return Rows.of(new NoPots(state).rows());
        }
        return Rows.of(lines.stream().map(line -> new PotRow(state, line).row()).toList());
    }
}
