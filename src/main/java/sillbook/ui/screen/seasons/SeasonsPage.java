// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Variety;
import sillbook.season.past.Tallied;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.grown.PotsBehind;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Searchable;
import sillbook.ui.screen.mark.MarkOffers;
import sillbook.words.TallyWords;

/** What did well, over all winters: plain counts and what was noted last. */
public record SeasonsPage(Cursor cursor, SeasonsView view, Find find) implements Searchable {
    public static final SeasonsPage OPEN = new SeasonsPage(Cursor.FIRST, SeasonsView.VARIETIES, Find.CLOSED);

    private FindPane list(State state) {
        SeasonsRows lines = new SeasonsRows(state, view);
        return new FindPane(find, lines.rows(), cursor, lines.heads());
    }

    private SeasonsPage at(Cursor to) {
        return new SeasonsPage(to, view, find);
    }

    SeasonsPage viewed(SeasonsView other) {
        return new SeasonsPage(Cursor.FIRST, other, find);
    }

    @Override
    public Layer finding(Find other) {
        return new SeasonsPage(Cursor.FIRST, view, other);
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(list(state).rows());
    }

    @Override
    public Layer at(State state, Thing thing) {
        SeasonsPage all = new SeasonsPage(cursor, view, Find.CLOSED);
        return all.at(all.list(state).to(thing, state.body().rows()));
    }

    private Optional<Tallied> under(State state) {
        return thing(state).flatMap(new SeasonsRows(state, view)::under);
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Look look = Look.body(list)
                .withPlace("by share of well, " + list.place(body.rows()))
                .withAside(aside(state))
                .withFoot(
                        Action.LIST_FOUND,
                        Action.OPEN_POTS,
                        Action.VIEW,
                        Action.CHOOSE_VARIETY,
                        Action.SET_ASIDE,
                        Action.FIND,
                        Action.WRITE_LINE,
                        Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state) {
        TallyWords words = new TallyWords(state.journal());
        return under(state)
                .map(one -> Aside.of(words.name(one.what()), words.aside(one)))
                .orElse(Aside.NONE);
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state, key -> at(list(state).pressed(key, state.body().rows()))));
        offers.addAll(findOffers(state));
        if (find.isTyping()) {
            return offers;
        }
        Optional<Tallied> under = under(state);
        offers.add(Offer.of(
                        Action.OPEN_POTS,
                        () -> Step.to(under.map(one -> state.laid(PotsBehind.of(one.what())))
                                .orElse(state)))
                .offIf(under.isEmpty(), "there is no outcome yet"));
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.laid(new ViewChoice(this)))));
        Optional<Variety> variety = under.map(Tallied::what)
                .flatMap(SeasonsRows::variety)
                .flatMap(state.journal().varieties()::find);
        offers.addAll(new MarkOffers(state, variety).offers());
        new Acts(state, Optional.empty())
                .offers().stream()
                        .filter(offer -> offer.action() != Action.CHECK)
                        .forEach(offers::add);
        return offers;
    }

    /** At its top it stays there, and no winter need be read for it. */
    @Override
    public Layer settled(State before, State after, Cause cause) {
        if (cursor.at() == 0) {
            return this;
        }
        return at(list(after).settled(list(before), cause, after.body().rows()));
    }
}
