// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.imports;

import java.util.List;
import java.util.OptionalLong;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Waiting;
import sillbook.words.Counts;

/**
 * Tells how far the readings of a file are taken in, and lets it be left.
 *
 * @param isStopping whether it was left, and the answer is still to come
 */
record TakingIn(String name, long done, long all, OptionalLong secondsLeft, boolean isStopping) implements Waiting {
    private static final int BAR = 20;
    private static final int ROWS = 2;

    static TakingIn begun(String name, long all) {
        return new TakingIn(name, 0, all, OptionalLong.empty(), false);
    }

    @Override
    public Look look(State state, Size body) {
        return Look.slip("Taking in " + name, ROWS, this::render)
                .withAside(
                        Aside.of(isStopping ? "It is being left; nothing of it stays." : "Esc leaves nothing of it."))
                .withFoot(Action.BACK);
    }

    private void render(Rect area, Cells cells) {
        Rect line = area.line(0).withoutLeft(1);
        int column = cells.put(line.column(), line.row(), "Reading " + Columns.fit(name, 22) + "  ", Style.INK);
        int filled = all == 0 ? 0 : (int) Math.min(BAR, done * BAR / all);
        for (int cell = 0; cell < BAR; cell++) {
            Sign sign = cell < filled ? Sign.BAR : Sign.BAR_ASSUMED;
            cells.put(column + cell, line.row(), sign, cell < filled ? Style.INK : Style.PENCIL);
        }
        String count = Counts.grouped(done) + " of " + Counts.grouped(Math.max(all, done));
        String left = secondsLeft.isPresent() ? "  " + secondsLeft.getAsLong() + " s" : "";
        int room = line.columns() - (column - line.column()) - BAR - 2;
        String text = Width.of(count + left) <= room ? count + left : Counts.grouped(done);
        cells.put(column + BAR + 2, line.row(), text, Style.INK);
    }

    @Override
    public TakingIn takingIn(Message.TakingIn soFar) {
        return new TakingIn(name, soFar.done(), Math.max(all, soFar.all()), soFar.secondsLeft(), isStopping);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.of(Action.BACK, () -> stop(state)).saying("leave nothing"));
    }

    private Step stop(State state) {
        return Step.to(state.withTop(new TakingIn(name, done, all, secondsLeft, true)), new Effect.StopTakingIn());
    }
}
