// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import sillbook.model.Batch;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Way;
import sillbook.model.Purchase;
import sillbook.season.WaitingBulbs;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Row;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.why.WhySlip;
import sillbook.words.PotNames;

/**
 * The pots of a place and the bulbs that wait there, or some pots, to be marked one by one; closing it writes down that all are well but for the marks.
 *
 * @param opened batches shown pot by pot
 * @param next what the next digit is of
 */
public record RoundPage(Whose whose, Marks marks, Set<Id<Batch>> opened, Cursor cursor, Digits next) implements Layer {

    private static final String NOT_POTTED = "these bulbs are not potted yet";

    /** What a digit is of: the shoot, or in a glass the roots; and whether it goes on with the one before it. */
    public enum Digits {
        SHOOT,
        SHOOT_GOES_ON,
        ROOTS,
        ROOTS_GO_ON
    }

    public RoundPage {
        opened = Set.copyOf(opened);
    }

    /** The round of a place. */
    public static RoundPage of(Place place) {
        return new RoundPage(Whose.of(place), Marks.NONE, Set.of(), Cursor.FIRST, Digits.SHOOT);
    }

    /** A look at some pots. */
    public static RoundPage of(State state, List<Id<Pot>> pots) {
        return new RoundPage(Whose.of(state, pots), Marks.NONE, Set.of(), Cursor.FIRST, Digits.SHOOT);
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of(whose.draftName());
    }

    @Override
    public boolean isHalfDone() {
        return !marks.isEmpty();
    }

    Rows rows(State state) {
        List<Row> rows = new ArrayList<>();
        for (List<Id<Pot>> batch : whose.batches(state)) {
            if (isOpen(state, batch.get(0))) {
                batch.forEach(pot -> rows.add(new RoundRow(state, List.of(pot), marks).row()));
            } else {
                rows.add(new RoundRow(state, batch, marks).row());
            }
        }
        whose.bulbs(state).forEach(bulbs -> rows.add(new BulbsRow(state, bulbs, marks).row()));
        return Rows.of(rows);
    }

    private boolean isOpen(State state, Id<Pot> pot) {
        return batch(state, pot).filter(opened::contains).isPresent();
    }

    private static Optional<Id<Batch>> batch(State state, Id<Pot> pot) {
        return state.journal().pots().get(pot).batch();
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(rows(state));
    }

    /** The pots under the cursor. */
    List<Id<Pot>> under(State state) {
        return under(rows(state), cursor.at());
    }

    private static List<Id<Pot>> under(Rows rows, int at) {
        List<Thing> things = rows.things();
        return at >= 0 && at < things.size() && things.get(at) instanceof Thing.OfPots of ? of.pots() : List.of();
    }

    /** What the cursor stands on: pots, or a purchase that waits. */
    private List<Id<?>> marked(State state) {
        return marked(rows(state), cursor.at());
    }

    private static List<Id<?>> marked(Rows rows, int at) {
        List<Id<?>> marked = new ArrayList<>(under(rows, at));
        List<Thing> things = rows.things();
        if (at >= 0 && at < things.size()) {
            things.get(at).asPurchase().ifPresent(marked::add);
        }
        return marked;
    }

    /** The dry bulbs under the cursor. */
    Optional<WaitingBulbs> bulbsUnder(State state) {
        Optional<Id<Purchase>> purchase = thing(state).flatMap(Thing::asPurchase);
        return whose.bulbs(state).stream()
                .filter(bulbs -> purchase.equals(Optional.of(bulbs.purchase().id())))
                .findFirst();
    }

    @Override
    public Look look(State state, Size body) {
        return new RoundLook(this, state, body).look();
    }

    @Override
    public List<Offer> offers(State state) {
        List<Id<Pot>> under = under(state);
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(state, key -> moved(state, key)));
        for (Mark mark : Mark.values()) {
            offers.add(Offer.of(mark.action(), () -> toggled(state, mark))
                    .offIf(under.isEmpty() && !mark.isOfDryBulbs(), NOT_POTTED)
                    .offIf(!isOfAny(state, under, mark), "it cannot be seen in this way of growing"));
        }
        offers.add(Offer.byKey(Action.MARK_SHOOT, key -> Step.to(state.withTop(typed(state, key))))
                .offIf(under.isEmpty(), NOT_POTTED));
        offers.add(Offer.of(Action.MARK_TROUBLE, () -> trouble(state)));
        offers.add(Offer.of(Action.DAY_OF_ROUND, () -> Step.to(state.laid(DaySlip.OPEN))));
        offers.add(change(state, Action.UNMARK, found -> Found.NOTHING)
                .offIf(marks.haveAll(marked(state), Found::isNothing), "nothing is marked here"));
        offers.add(change(state, Action.AS_ABOVE, found -> above(state)).offIf(cursor.at() == 0, "no line is above"));
        offers.add(Offer.of(Action.OPEN_BATCH, () -> openOrShut(state)).offIf(alone(state)));
        offers.add(jot(state, under));
        offers.add(Offer.of(Action.CLOSE_ROUND, () -> close(state)));
        offers.add(WhySlip.offer(state, under.stream().findFirst()));
        return offers.stream()
                .map(offer -> offer.offIf(whose.all(state).isEmpty(), "nothing stands here any more"))
                .toList();
    }

    private static Offer jot(State state, List<Id<Pot>> under) {
        return Offer.of(Action.JOT, () -> Step.to(state.laid(Entry.jot(state, under))))
                .offIf(under.isEmpty(), NOT_POTTED);
    }

    private Offer change(State state, Action action, UnaryOperator<Found> change) {
        return Offer.of(action, () -> marked(state, marks.with(marked(state), change)));
    }

    private Step marked(State state, Marks other) {
        return Step.to(state.withTop(with(other, Digits.SHOOT)));
    }

    /** Roots that are marked in a glass have a length: the next digits are of it. */
    private Step toggled(State state, Mark mark) {
        List<Id<Pot>> under = under(state);
        Marks changed = marks.toggled(marked(state), mark);
        boolean isOfGlass = !under.isEmpty() && under.stream().allMatch(pot -> way(state, pot) == Way.GLASS);
        boolean isRooted = mark == Mark.ROOTS && changed.haveAll(under, found -> found.has(mark));
        return Step.to(state.withTop(with(changed, isOfGlass && isRooted ? Digits.ROOTS : Digits.SHOOT)));
    }

    private static boolean isOfAny(State state, List<Id<Pot>> pots, Mark mark) {
        return pots.isEmpty() || pots.stream().anyMatch(pot -> mark.isOf(way(state, pot)));
    }

    private static Way way(State state, Id<Pot> pot) {
        return state.journal().pots().get(pot).way();
    }

    private RoundPage with(Marks other, Digits digits) {
        return new RoundPage(whose, other, opened, cursor, digits);
    }

    private RoundPage moved(State state, Key key) {
        Rows rows = rows(state);
        int height = new RoundLook(this, state, state.body()).listRows();
        return new RoundPage(whose, marks, opened, cursor.pressed(key, rows, height), Digits.SHOOT);
    }

    /** The same single digit again takes the height away; right after a digit it goes on with it. */
    private RoundPage typed(State state, Key key) {
        String digit = key.words();
        List<Id<Pot>> under = under(state);
        if (next == Digits.ROOTS || next == Digits.ROOTS_GO_ON) {
            boolean goesOn = next == Digits.ROOTS_GO_ON;
            return with(marks.with(under, found -> found.withRootDigit(digit, goesOn)), Digits.ROOTS_GO_ON);
        }
        boolean goesOn = next == Digits.SHOOT_GOES_ON;
        boolean isSame = !goesOn && marks.haveAll(under, found -> found.shoot().equals(digit));
        return isSame
                ? with(marks.with(under, Found::withoutShoot), Digits.SHOOT)
                : with(marks.with(under, found -> found.withDigit(digit, goesOn)), Digits.SHOOT_GOES_ON);
    }

    private Step trouble(State state) {
        List<Id<?>> those = marked(state);
        return marks.haveAll(those, found -> found.trouble().isPresent())
                ? marked(state, marks.with(those, Found::withoutTrouble))
                : Step.to(state.laid(TroubleSlip.of(called(state), those)));
    }

    private String called(State state) {
        return thing(state)
                .flatMap(Thing::asPurchase)
                .map(purchase -> new PotNames(state.journal())
                        .variety(state.journal().purchases().get(purchase).variety()))
                .orElseGet(() -> new PotNames(state.journal()).labels(under(state)));
    }

    /** The same, of that day. */
    RoundPage on(LocalDate day) {
        return new RoundPage(whose.on(day), marks, opened, cursor, Digits.SHOOT);
    }

    /** With other trouble on some of them, in these words. */
    RoundPage troubled(List<Id<?>> those, String words) {
        return with(marks.with(those, found -> found.withTrouble(words)), Digits.SHOOT);
    }

    /** What the line above has; where its pots differ, what the first of them has. */
    private Found above(State state) {
        Found above = marked(rows(state), cursor.at() - 1).stream()
                .findFirst()
                .map(marks::of)
                .orElse(Found.NOTHING);
        return under(state).isEmpty() ? above.ofDryBulbs() : above;
    }

    private Optional<String> alone(State state) {
        List<Id<Pot>> under = under(state);
        boolean isOfBatch = under.size() > 1 || under.stream().anyMatch(pot -> isOpen(state, pot));
        return isOfBatch ? Optional.empty() : Optional.of("this is one pot");
    }

    private Step openOrShut(State state) {
        Id<Pot> first = under(state).get(0);
        Set<Id<Batch>> other = new HashSet<>(opened);
        batch(state, first).filter(batch -> !other.remove(batch)).ifPresent(other::add);
        RoundPage changed = new RoundPage(whose, marks, other, cursor, Digits.SHOOT);
        RoundLook look = new RoundLook(changed, state, state.body());
        Cursor there = cursor.to(Thing.of(first), changed.rows(state), look.listRows());
        return Step.to(state.withTop(new RoundPage(whose, marks, other, there, Digits.SHOOT)));
    }

    private Step close(State state) {
        return Step.keep(
                state, whose.change(state, marks), state.layers().over().size() - 1);
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        RoundPage left = new RoundPage(whose, marks.on(whose.all(after)), opened, cursor, Digits.SHOOT);
        int height = new RoundLook(left, after, after.body()).listRows();
        Cursor there = cursor.settled(rows(before), left.rows(after), cause, height);
        return new RoundPage(whose, left.marks, opened, there, Digits.SHOOT);
    }
}
