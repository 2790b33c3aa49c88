// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import sillbook.season.Sill;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;

/**
 * A page, or something that lies over one: a card, a slip, a form, help. Layers are values; what a key makes of one is a new one in
 * the next state.
 */
public interface Layer {

    /** How it shows itself in a body of that size, foot included. */
    Look look(State state, Size body);

    /** What can be done here and by which keys, in the order help lists it; what holds everywhere is not repeated. */
    List<Offer> offers(State state);

    /** What the cursor stands on, if on anything. */
    default Optional<Thing> thing(State state) {
        return Optional.empty();
    }

    /** This layer with its cursor on that thing, if it has it. */
    default Layer at(State state, Thing thing) {
        return this;
    }

    /** The time under the months while its page is open. */
    default Timescale timescale(State state) {
        return state.timescale();
    }

    /** What stands on the sill under the months while its page is open. */
    default Sill sill(State state) {
        return state.almanac().sill(timescale(state).season());
    }

    /** Takes a key that is text here, before any offer; empty when the key is none. */
    default Optional<Step> type(State state, Key key) {
        return Optional.empty();
    }

    /** Takes pasted text; outside fields it is nothing. */
    default Step paste(State state, String text) {
        return Step.to(state);
    }

    /** Which of the keys that hold everywhere hold here too. */
    default Reach reach() {
        return Reach.SLIP;
    }

    /** This layer in a state that changed around it. */
    default Layer settled(State before, State after, Cause cause) {
        return this;
    }

    /** What is laid over the book that is opened from here; empty when nothing is. */
    default Optional<Layer> overOpened(Snapshot opened) {
        return Optional.empty();
    }

    /** Under which name it waits when it is left half done; empty when it never waits. */
    default Optional<String> draftName() {
        return Optional.empty();
    }

    /** Whether something typed here would be lost. */
    default boolean isHalfDone() {
        return false;
    }

    /** What is drawn here that the journal has not: {@code the plan of 2027-28 as drawn}. */
    default Optional<String> unkept(State state) {
        return Optional.empty();
    }

    /** Steps that were asked for with {@link Effect.ListSteps}. */
    default Layer listed(State state, Message.StepsListed steps) {
        return this;
    }

    /** A table that was asked for with {@link Effect.ReadTable}. */
    default Step tableRead(State state, Message.TableRead table) {
        return Step.to(state);
    }

    /** A thermometer's file that was asked for with {@link Effect.LookAtLogger}. */
    default Step loggerLookedAt(State state, Message.LoggerLookedAt file) {
        return Step.to(state);
    }

    /** How far what was asked for with {@link Effect.TakeInLogger} is. */
    default Layer takingIn(Message.TakingIn soFar) {
        return this;
    }

    /** What was asked for with {@link Effect.Average}. */
    default Layer averaged(Message.Averaged answer) {
        return this;
    }

    /** What was asked for with {@link Effect.ReadKept}. */
    default Layer keptRead(Message.KeptRead answer) {
        return this;
    }

    /** What was asked for with {@link Effect.ReadChart}. */
    default Layer chartRead(Message.ChartRead answer) {
        return this;
    }

    /** A plan that {@link Effect.Seek} has found on its way. */
    default Layer foundSoFar(Message.FoundSoFar answer) {
        return this;
    }

    /** What came of {@link Effect.Seek}. */
    default Layer sought(Message.Sought answer) {
        return this;
    }

    /** What goes on for a page while others are looked at: {@code looking for the best plan}. */
    default Optional<String> goesOn() {
        return Optional.empty();
    }

    /** What ends that which a page asked for and which goes on, where the journal is another now in what it was asked about. */
    default Optional<Effect> overtaken(State before, State after) {
        return Optional.empty();
    }

    /** What this layer asks the shell for as soon as it is on top; the same state and nothing where there is nothing to ask. */
    default Step onTop(State state) {
        return Step.to(state);
    }

    /** How far the keys that hold everywhere reach. */
    enum Reach {
        /** All of them: pages, cards. */
        PAGE,
        /** Only those that leave, explain or draw again. */
        SLIP,
        /** The same, letters being text: only keys with names. */
        FIELD
    }

    /** Why the state changed. */
    enum Cause {
        /** The grower acted here: the cursor keeps its line, so that the next thing comes under it. */
        ACT,
        /** A step was taken back or put back: the cursor goes to what came back. */
        BACK,
        /** Something changed elsewhere, or the day: the cursor keeps its thing. */
        ELSEWHERE,
        /** The window has another size. */
        RESIZE
    }
}
