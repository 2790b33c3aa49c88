// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.choosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Variety;
import sillbook.season.past.Candidate;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Searchable;
import sillbook.words.CandidateWords;

/**
 * What there is to choose from for the coming season, with what speaks for each.
 *
 * @param order of the varieties when the page was opened: a line that is marked stays where it is, so that one can go on down
 */
public record ChoosingPage(List<Id<Variety>> order, Cursor cursor, Find find) implements Searchable {
    public ChoosingPage {
        order = List.copyOf(order);
    }

    /** The page with the chosen first and what is set aside last. */
    public static ChoosingPage of(State state) {
        List<Id<Variety>> order = state.almanac().choosing().candidates().stream()
                .map(one -> one.variety().id())
                .toList();
        return new ChoosingPage(order, Cursor.FIRST, Find.CLOSED);
    }

    private ChoosingPage at(Cursor to) {
        return new ChoosingPage(order, to, find);
    }

    private FindPane list(State state) {
        ChoosingRows lines = new ChoosingRows(state, order);
        return new FindPane(find, lines.rows(), cursor, lines.heads());
    }

    @Override
    public Layer finding(Find other) {
        return new ChoosingPage(order, Cursor.FIRST, other);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(list(state).rows());
    }

    @Override
    public Layer at(State state, Thing thing) {
        return at(list(state).to(thing, state.body().rows()));
    }

    private Optional<Candidate> under(State state) {
        return new ChoosingRows(state, order).under(thing(state));
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Look look = Look.body(list)
                .withPlace("by use to you, " + list.place(body.rows()))
                .withAside(under(state).map(one -> aside(state, one)).orElse(Aside.NONE))
                .withFoot(
                        Action.LIST_FOUND,
                        Action.CHOOSE_VARIETY,
                        Action.SET_ASIDE,
                        Action.HOW_MANY,
                        Action.HAND_ON,
                        Action.OPEN_VARIETY,
                        Action.WHY,
                        Action.NEW_VARIETY,
                        Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private static Aside aside(State state, Candidate candidate) {
        return Aside.of("'" + candidate.variety().name() + "'", new CandidateWords(candidate, state.journal()).aside());
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state, key -> at(list(state).pressed(key, state.body().rows()))));
        offers.addAll(findOffers(state));
        if (!find.isTyping()) {
            offers.addAll(new ChoosingOffers(state, under(state)).offers());
        }
        return offers;
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return at(list(after).settled(list(before), cause, after.body().rows()));
    }
}
