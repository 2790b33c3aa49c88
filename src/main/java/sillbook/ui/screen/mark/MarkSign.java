// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.mark;

import java.util.Optional;
import sillbook.model.Choice.Mark;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Variety;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;

/** A variety's line, with a sign before it where the variety is chosen or set aside for the coming season. */
public record MarkSign(Optional<Sign> sign, Widget line) implements Widget {
    /** A column of its own for each, so that they are told apart down a long list. */
    private static final int CHOSEN = 1;

    private static final int SET_ASIDE = 2;

    public static Widget before(Widget line, Id<Variety> variety, State state) {
        Journal journal = state.journal();
        return new MarkSign(
                journal.choiceHolding(variety, journal.chosenFor(state.shown().today()))
                        .flatMap(choice -> sign(choice.mark())),
                line);
    }

    private static Optional<Sign> sign(Mark mark) {
        return mark.fold(chosen -> Optional.of(Sign.CHOSEN), setAside -> Optional.of(Sign.SET_ASIDE), Optional::empty);
    }

    @Override
    public void render(Rect area, Cells cells) {
        line.render(area, cells);
        sign.ifPresent(mark ->
                cells.put(area.column() + (mark == Sign.CHOSEN ? CHOSEN : SET_ASIDE), area.row(), mark, Style.BOLD));
    }
}
