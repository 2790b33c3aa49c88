// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.grown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.season.past.Shared;
import sillbook.season.past.Tallied;
import sillbook.ui.draw.Size;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.act.Acts;
import sillbook.ui.screen.card.PotCard;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.pot.PotAside;
import sillbook.words.TallyWords;

/** The pots of all winters behind a count: those that share a variety, a purchase, a potting mix or a place of cold. */
public record PotsBehind(Shared what, Cursor cursor) implements Layer {

    public static PotsBehind of(Shared what) {
        return new PotsBehind(what, Cursor.FIRST);
    }

    /** The same with the cursor on that pot. */
    public PotsBehind at(State state, Id<Pot> pot) {
        return new PotsBehind(what, list(state).to(Thing.of(pot), state.body().rows()));
    }

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private Tallied tallied(State state) {
        return state.almanac().winters().sharing(what);
    }

    private FindPane list(State state) {
        Tallied tallied = tallied(state);
        boolean isOneVariety = what instanceof Shared.OfVariety || what instanceof Shared.OfPurchase;
        List<Row> rows = tallied.grown().stream()
                .map(grown -> Row.of(Thing.of(grown.pot().id()), new GrownLine(grown, isOneVariety, state.journal())))
                .toList();
        Widget title = (line, cells) -> {
            String name = tallied.grown().isEmpty() ? "" : new TallyWords(state.journal()).name(what);
            int after = cells.put(line.column() + 1, line.row(), name, Style.BOLD);
            cells.put(after + 2, line.row(), TallyWords.sum(tallied.tally().winters(), tallied.tally()), Style.INK);
        };
        Widget columns = (line, cells) -> GrownLine.heading(isOneVariety, line, cells);
        return new FindPane(Find.CLOSED, Rows.of(rows), cursor, List.of(title, columns));
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(list(state).rows());
    }

    private Optional<Id<Pot>> pot(State state) {
        return thing(state).flatMap(Thing::asPots).map(Thing.OfPots::first);
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        Look look = Look.body(list)
                .withPlace("oldest first, " + list.place(body.rows()))
                .withAside(pot(state).map(new PotAside(state)::of).orElse(Aside.NONE))
                .withFoot(Action.OPEN_CARD, Action.OUTCOME, Action.CORRECT, Action.WRITE_LINE, Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    @Override
    public List<Offer> offers(State state) {
        Optional<Id<Pot>> pot = pot(state);
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state,
                key -> new PotsBehind(
                        what, list(state).pressed(key, state.body().rows()))));
        offers.add(Offer.of(
                        Action.OPEN_CARD,
                        () -> Step.to(pot.map(one -> state.laid(PotCard.of(state, one)))
                                .orElse(state)))
                .offIf(pot.isEmpty(), "there is no pot here"));
        offers.addAll(new Acts(state, thing(state)).offers());
        return offers;
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return new PotsBehind(
                what, list(after).settled(list(before), cause, after.body().rows()));
    }
}
