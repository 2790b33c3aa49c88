// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.contents;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import sillbook.handbook.Handbook;
import sillbook.model.Ids;
import sillbook.ui.screen.Contents;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Kit;
import sillbook.ui.screen.Layers;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.PageName;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Window;
import sillbook.ui.screen.bulbs.BulbsPage;
import sillbook.ui.screen.diary.DiaryPage;
import sillbook.ui.screen.firstrun.FirstRun;
import sillbook.ui.screen.places.PlacesPage;
import sillbook.ui.screen.plan.PlanPage;
import sillbook.ui.screen.pots.PotsPage;
import sillbook.ui.screen.seasons.SeasonsPage;
import sillbook.ui.screen.today.TodayPage;

/** The book as it is bound: its pages in their order, and what holds on all of them. */
public record Sillbook() implements Contents {

    /** The screens over an open journal. */
    public static State open(Handbook handbook, Ids ids, Copy copy, Snapshot shown, Window window) {
        Sillbook book = new Sillbook();
        return State.open(new Kit(book, handbook, ids), copy, shown, window, book.pages(shown));
    }

    /**
     * The screens before there is a journal.
     *
     * @param shown an empty journal
     * @param usualFile where a journal of one's own will lie, as the grower would write it
     */
    public static State firstRun(Handbook handbook, Ids ids, Snapshot shown, Window window, String usualFile) {
        Layers page = Layers.of(Map.of(PageName.TODAY, FirstRun.of(usualFile)));
        return State.open(new Kit(new Sillbook(), handbook, ids), Copy.NONE, shown, window, page);
    }

    @Override
    public Layers pages(Snapshot shown) {
        return Layers.of(new EnumMap<>(Map.of(
                PageName.TODAY,
                TodayPage.OPEN,
                PageName.POTS,
                PotsPage.OPEN,
                PageName.PLACES,
                PlacesPage.OPEN,
                PageName.BULBS,
                BulbsPage.OPEN,
                PageName.PLAN,
                PlanPage.OPEN,
                PageName.SEASONS,
                SeasonsPage.OPEN,
                PageName.DIARY,
                DiaryPage.OPEN)));
    }

    @Override
    public List<Offer> everywhere(State state) {
        return new Everywhere(state).offers();
    }
}
