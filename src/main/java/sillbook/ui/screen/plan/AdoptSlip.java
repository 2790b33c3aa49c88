// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import sillbook.plan.PlanNow;
import sillbook.text.Columns;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Kinds;
import sillbook.words.plan.AdoptWords;
import sillbook.words.plan.Adopting;

/** Asks whether the season is to go by a plan, and says what that does. */
record AdoptSlip(PlanNow now) implements Layer {
    private static final int INDENT = 4;

    @Override
    public Look look(State state, Size body) {
        List<String> told = new AdoptWords(state.journal(), now)
                .lines().stream()
                        .flatMap(line -> Columns.wrap(line, body.columns() - 2 * INDENT).stream())
                        .toList();
        return Look.slip("Adopt plan " + now.plan().name(), told.size() + 1, (area, cells) -> {
                    for (int line = 0; line < told.size(); line++) {
                        cells.put(area.column() + INDENT, area.row() + 1 + line, told.get(line), Style.INK);
                    }
                })
                .withAside(Aside.of("", "One step; U takes it back.", ""))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    @Override
    public List<Offer> offers(State state) {
        Kinds kinds = new Kinds(state.journal(), state.kit().handbook());
        int layersAfter = state.layers().over().size() - 1;
        return List.of(Offer.of(Action.AGREE, () -> Step.keep(state, Adopting.of(now, kinds), layersAfter))
                .saying("adopt it"));
    }
}
