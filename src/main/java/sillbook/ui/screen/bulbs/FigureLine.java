// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.text.Columns;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Labelled;
import sillbook.words.FigureValues;
import sillbook.words.OriginMarks;
import sillbook.words.SourceWords;
import sillbook.words.Terms;

/**
 * A figure, with its mark and where it comes from.
 *
 * @param held empty where nobody published or wrote one
 */
record FigureLine(FigureName name, Optional<FigureInForce> held, SourceWords sources) implements Widget {
    private static final int VALUE = 33;
    private static final int SOURCE = 50;

    @Override
    public void render(Rect line, Cells cells) {
        cells.put(line.column() + Labelled.TEXT, line.row(), Terms.FIGURES.say(name), Style.INK);
        Style style = held.isPresent() ? Style.INK : Style.PENCIL;
        int after = cells.put(line.column() + VALUE, line.row(), value(), style) - line.column();
        Rect source = line.withoutLeft(Math.max(SOURCE, after + 1));
        String whose = held.map(sources::whose).orElse("");
        cells.put(source.column(), source.row(), Columns.fit(whose, source.columns() - 1), Style.INK);
    }

    private String value() {
        return held.map(figure ->
                        OriginMarks.mark(figure.origin()) + FigureValues.say(name, figure.range(), sources.settings()))
                .orElse("no data");
    }
}
