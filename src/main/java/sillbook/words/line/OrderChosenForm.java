// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.change.OrderChosen;
import sillbook.model.Choice;
import sillbook.model.Journal;
import sillbook.model.Season;

/** {@code order all chosen}: what is chosen for a season becomes purchases to order. */
final class OrderChosenForm implements Form {

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "order all chosen",
                "All that is chosen is written down to order, one purchase for each variety. What is to order already, ordered or in hand "
                        + "for that season is not ordered twice. For and a season, if not the coming one.",
                "order all chosen",
                "order all chosen for 2028-29");
    }

    @Override
    public List<String> keywords() {
        return List.of("order all chosen");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Marking.SEASON);
    }

    @Override
    public int wanting(Filled filled) {
        return 0;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Journal journal = draft.bench().journal();
        Season season = Marking.season(filled, draft.bench());
        draft.means("all that is chosen for season " + journal.nameOf(season));
        OrderChosen.chosen(journal, season).forEach(choice -> draft.means(said(choice, journal)));
        draft.change(new OrderChosen(season));
    }

    private static String said(Choice choice, Journal journal) {
        int bulbs = choice.toOrder(journal);
        String name = Lines.quoted(journal.varieties().get(choice.variety()).name());
        return bulbs > 0 ? bulbs + " " + name + ", to order" : name + ", no more: to order, ordered or in hand already";
    }
}
