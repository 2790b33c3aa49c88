// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.choosing;

import java.util.List;
import java.util.stream.IntStream;
import sillbook.change.OrderChosen;
import sillbook.season.past.Candidate;
import sillbook.season.past.Choosing;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Counts;

/** Asks whether as many bulbs as that are to be written down to order, and names them. */
record OrderSlip(OrderChosen order) implements Layer {
    private static final int NAME = 8;
    private static final int BULBS_END = 6;
    private static final int LEAST_PAGE = 4;

    @Override
    public Look look(State state, Size body) {
        Choosing choosing = state.almanac().choosing();
        List<Candidate> missing = choosing.toOrder();
        int room = Math.max(1, Math.min(missing.size(), body.rows() - LEAST_PAGE));
        return Look.slip(
                        "To order for " + state.journal().nameOf(order.season()),
                        room + 1,
                        (area, cells) -> render(missing, room, area, cells))
                .withAside(Aside.of(
                        "",
                        Counts.of(choosing.bulbsToOrder(), "bulb") + " of " + missing.size()
                                + " varieties, one purchase for each.",
                        "Nothing is sent to anyone: it stands on Bulbs, purchases, until it is ordered."))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    private static void render(List<Candidate> missing, int room, Rect area, Cells cells) {
        boolean isAll = missing.size() <= room;
        int named = isAll ? missing.size() : room - 1;
        IntStream.range(0, named).forEach(at -> line(missing.get(at), area.line(at + 1), cells));
        if (!isAll) {
            Rect last = area.line(room);
            cells.put(last.column() + NAME, last.row(), "and " + (missing.size() - named) + " more", Style.INK);
        }
    }

    private static void line(Candidate one, Rect line, Cells cells) {
        new Right(line, cells).put(BULBS_END, Integer.toString(one.toOrder()), Style.BOLD);
        cells.put(line.column() + NAME, line.row(), "'" + one.variety().name() + "'", Style.INK);
    }

    @Override
    public List<Offer> offers(State state) {
        int layersAfter = state.layers().over().size() - 1;
        return List.of(Offer.of(Action.AGREE, () -> Step.keep(state, order, layersAfter))
                .saying("write them down"));
    }
}
