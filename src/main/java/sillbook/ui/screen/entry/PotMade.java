// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.PotUp;
import sillbook.change.Together;
import sillbook.model.Journal;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.PotFit;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.PotFromAbove;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Sits;
import sillbook.ui.screen.pot.PotPicture;
import sillbook.words.PotFitWords;

/** How the bulbs of pots that are about to be made will sit, from above, with how many would fit. */
record PotMade(PotPicture picture, PotFitWords fits) implements Widget {

    /** Empty where no pots are made, or their width or the size of their bulbs is not known. */
    static Optional<Widget> picture(Journal journal, Change change) {
        return potUps(change)
                .findFirst()
                .flatMap(pots -> PotFit.of(journal, pots.plantings(), pots.container(), pots.across())
                        .flatMap(fit -> of(fit, pots, journal)));
    }

    private static Optional<Widget> of(PotFit fit, PotUp pots, Journal journal) {
        LengthUnit unit = journal.settings().lengths();
        return PotPicture.of(Sits.of(fit, pots.potting().depth(), unit))
                .map(picture -> new PotMade(picture, new PotFitWords(fit, unit)));
    }

    private static Stream<PotUp> potUps(Change change) {
        List<Change> changes = change instanceof Together together ? together.changes() : List.of(change);
        return changes.stream().filter(PotUp.class::isInstance).map(PotUp.class::cast);
    }

    @Override
    public void render(Rect area, Cells cells) {
        cells.put(area.column(), area.row(), "from above, to scale", Style.PENCIL);
        new PotFromAbove(picture.drawing())
                .render(new Rect(area.column(), area.row() + 1, area.columns(), area.rows() - 2), cells);
        int last = area.bottom() - 1;
        fits.tooMany()
                .ifPresentOrElse(
                        tooMany -> {
                            cells.put(area.column(), last, Sign.LATE, Style.RUST);
                            cells.put(area.column() + 2, last, tooMany, Style.RUST);
                        },
                        () -> cells.put(area.column(), last, fits.room(), Style.INK));
    }
}
