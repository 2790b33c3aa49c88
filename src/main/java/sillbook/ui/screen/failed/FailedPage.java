// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.failed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Close;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Failure;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.Suspect;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.ListPane;
import sillbook.ui.screen.list.Rows;
import sillbook.ui.screen.why.WhySlip;
import sillbook.words.PotNames;
import sillbook.words.SuspectWords;

/**
 * Asks what went wrong with a pot. Enter on a cause, or on the last line, ends its winter as failed if it has not ended, and writes
 * down what is marked.
 */
public record FailedPage(Id<Pot> pot, String label, Marking before, Marking marking, Cursor cursor) implements Layer {
    /** The lines the cursor comes to, in their order; the roots are between the first two. */
    private static final int SIGNS = 0;

    private static final int CUT_BUD = 2;
    private static final int FIRST_CAUSE = 3;

    public static FailedPage of(State state, Id<Pot> pot) {
        Marking known = Marking.of(state.journal().failureOf(pot));
        return new FailedPage(pot, state.journal().pots().get(pot).label(), known, known, Cursor.FIRST);
    }

    private static Optional<Outcome> outcome(State state, Id<Pot> pot) {
        return state.almanac().outlook().livingOn().outcomes(pot).stream()
                .filter(each -> each.variety().isEmpty())
                .findFirst();
    }

    private boolean isThere(State state) {
        return state.journal().pots().contains(pot);
    }

    private Rows rows(State state) {
        return isThere(state) ? new FailedRows(state, pot, marking).rows() : Rows.of(List.of());
    }

    private Optional<Thing> under(State state) {
        return cursor.thing(rows(state));
    }

    private Optional<Suspect> suspect(State state) {
        return isThere(state)
                ? state.almanac().outlook().suspects(pot, marking.failure()).stream()
                        .filter(each -> under(state).equals(Optional.of(FailedRows.thing(each))))
                        .findFirst()
                : Optional.empty();
    }

    @Override
    public Reach reach() {
        return isTyping() ? Reach.FIELD : Reach.SLIP;
    }

    private boolean isTyping() {
        return cursor.at() == CUT_BUD;
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("what went wrong with " + label);
    }

    @Override
    public boolean isHalfDone() {
        return !marking.failure().equals(before.failure());
    }

    @Override
    public Optional<Thing> thing(State state) {
        return isThere(state) ? Optional.of(Thing.of(pot)) : Optional.empty();
    }

    @Override
    public Look look(State state, Size body) {
        ListPane pane = new ListPane(rows(state), cursor);
        Look look = Look.body(pane)
                .withPlace(label + ", failed")
                .withAside(aside(state))
                .withFoot(Action.CONFIRM_CAUSE, Action.MARK_FOUND, Action.JOT, Action.OUTCOME, Action.WHY, Action.BACK);
        return pane.point(body.rows()).map(look::withCursor).orElse(look);
    }

    private Aside aside(State state) {
        String kept = "A confirmed cause stands on the card of " + label + "; it can be left open, and changed.";
        return suspect(state)
                .map(each -> Aside.of(
                        SuspectWords.cause(each.cause()),
                        entries(state, each),
                        SuspectWords.fits(each).orElse(kept)))
                .orElseGet(
                        () -> Aside.of("", "Space marks what was found, Left and Right choose; Enter goes on.", kept));
    }

    private String entries(State state, Suspect suspect) {
        if (suspect.verdict() != Suspect.Verdict.SPEAKS_FOR) {
            return "No entry speaks for it. You may know better.";
        }
        List<Id<Pot>> others = state.almanac().outlook().alsoThrough(pot, suspect);
        String entries =
                suspect.clues().size() == 1 ? "1 entry." : suspect.clues().size() + " entries.";
        return others.isEmpty()
                ? entries
                : entries + " The same nights stood there: " + new PotNames(state.journal()).labels(others) + "; check "
                        + (others.size() == 1 ? "it." : "them.");
    }

    @Override
    public Optional<Step> type(State state, Key key) {
        return isTyping()
                ? marking.cutBud().press(key).map(typed -> to(state, marking.withCutBud(typed)))
                : Optional.empty();
    }

    @Override
    public Step paste(State state, String text) {
        return isTyping() ? to(state, marking.withCutBud(marking.cutBud().insert(text))) : Step.to(state);
    }

    private Step to(State state, Marking other) {
        return Step.to(state.withTop(new FailedPage(pot, label, before, other, cursor)));
    }

    @Override
    public List<Offer> offers(State state) {
        boolean onWords = cursor.at() < CUT_BUD;
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.byKey(Action.MOVE_CURSOR, key -> moved(state, key)));
        offers.add(Offer.byKey(Action.CHOOSE_FOUND, key -> chosen(state, key))
                .offIf(!onWords, "the cursor is not on the sign or the roots"));
        offers.add(Offer.of(
                        Action.MARK_FOUND,
                        () -> to(state, isOnSigns() ? marking.signToggled() : marking.rootsToggled()))
                .offIf(!onWords, "the cursor is not on the sign or the roots"));
        offers.add(Offer.of(Action.CONFIRM_CAUSE, () -> confirm(state))
                .saying(cursor.at() < FIRST_CAUSE ? "go on" : "confirm")
                .offIf(state.copy().isReadOnly(), "the journal is read only"));
        offers.add(Offer.of(Action.JOT, () -> Step.to(state.laid(Entry.jot(state, List.of(pot)))))
                .offIf(state.copy().isReadOnly(), "the journal is read only"));
        offers.add(Offer.of(Action.OUTCOME, () -> Step.to(state.laid(Entry.outcome(pots(state)))))
                .offIf(state.copy().isReadOnly(), "the journal is read only"));
        offers.add(why(state));
        return offers.stream()
                .map(offer -> offer.offIf(!isThere(state), "the pot is gone"))
                .toList();
    }

    /** On a cause, why it stands there; else the figures of the pot. */
    private Offer why(State state) {
        return suspect(state)
                .map(cause -> Offer.of(Action.WHY, () -> Step.to(state.laid(new CauseSlip(cause)))))
                .orElseGet(() -> WhySlip.offer(state, Optional.of(pot).filter(one -> isThere(state))));
    }

    private List<Pot> pots(State state) {
        return List.of(state.journal().pots().get(pot));
    }

    private boolean isOnSigns() {
        return cursor.at() == SIGNS;
    }

    private Step moved(State state, Key key) {
        return Step.to(
                state.withTop(at(cursor.pressed(key, rows(state), state.body().rows()))));
    }

    private FailedPage at(Cursor other) {
        return new FailedPage(pot, label, before, marking, other);
    }

    private Step chosen(State state, Key key) {
        int step = key.equals(Keys.LEFT) ? -1 : 1;
        return to(state, isOnSigns() ? marking.signBy(step) : marking.rootsBy(step));
    }

    /** Over the causes Enter goes to the first of them. */
    private Step confirm(State state) {
        if (cursor.at() < FIRST_CAUSE) {
            return Step.to(state.withTop(
                    at(cursor.to(FIRST_CAUSE, rows(state), state.body().rows()))));
        }
        Failure failure = marking.failure().withCause(suspect(state).map(Suspect::cause));
        return Step.keep(state, change(state, failure), state.layers().over().size() - 1);
    }

    private Change change(State state, Failure failure) {
        Day day = Day.on(state.shown().today());
        List<Change> changes = new ArrayList<>();
        if (state.almanac().pot(pot).life().stage() != Stage.DONE) {
            changes.add(new Close(List.of(pot), End.FAILED, "", day));
        }
        Outcome known = outcome(state, pot)
                .orElseGet(() -> Outcome.notJudged(state.kit().ids().next(), pot, Optional.empty(), day));
        changes.add(new WriteDown(known.withFailure(failure)));
        String cause =
                failure.cause().map(each -> "cause " + SuspectWords.cause(each)).orElse("cause left open");
        return new Together(label + " failed, " + cause, changes);
    }

    @Override
    public Layer settled(State earlier, State after, Cause why) {
        FailedPage now = isThere(after) && !isHalfDone() ? readAnew(after) : this;
        return now.at(
                cursor.settled(rows(earlier), now.rows(after), why, after.body().rows()));
    }

    private FailedPage readAnew(State after) {
        Marking known = marking.with(after.journal().failureOf(pot));
        return new FailedPage(pot, label, known, known, cursor);
    }
}
