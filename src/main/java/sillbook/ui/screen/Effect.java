// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import sillbook.change.Change;
import sillbook.model.Settings.Colours;

/** What a screen asks the shell to do. The shell answers with a {@link Message} where one is named. */
public sealed interface Effect {

    /** Carry out a change; answered by {@link Message.Kept}, {@link Message.Refused} or {@link Message.Failed}. */
    record CarryOut(Change change) implements Effect {}

    /** Take back the newest steps; answered by {@link Message.Kept} or {@link Message.Failed}. */
    record TakeBack(int steps) implements Effect {}

    /** Put back the steps last taken back; answered by {@link Message.Kept} or {@link Message.Failed}. */
    record PutBack(int steps) implements Effect {}

    /**
     * Name some of the journal's steps; answered by {@link Message.StepsListed}.
     *
     * @param from how many of the newest to pass over; those taken back are newer than all others
     */
    record ListSteps(int from, int howMany) implements Effect {}

    /** Read what the first picture did without; answered by {@link Message.Changed}. */
    record ReadRest() implements Effect {}

    /** Make a journal in the usual place and open it; answered by {@link Message.Opened}. */
    record BeginJournal(Colours colours) implements Effect {}

    /** Open a spare copy of the demo; answered by {@link Message.Opened}. */
    record SeeDemo(Colours colours) implements Effect {}

    /** Open the journal in a file; answered by {@link Message.Opened} or {@link Message.Failed}. */
    record OpenJournal(String file, Colours colours) implements Effect {}

    /** Leave the program; everything is kept already. */
    record Quit() implements Effect {}

    /** Go to the shell that started the program, and come back. */
    record Suspend() implements Effect {}

    /** Draw everything anew, whatever is thought to stand on the screen. */
    record Redraw() implements Effect {}
}
