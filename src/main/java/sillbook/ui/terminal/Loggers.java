// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sillbook.app.Book;
import sillbook.app.Result;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;

/** Reads the files of thermometers for the screens. */
public interface Loggers {
    /** Looks at one, and compares it with what the book has. */
    Message look(Effect.LookAtLogger asked, Book book);

    /**
     * Takes one in.
     *
     * @param isStopped asked on the way; when it says so, nothing of it stays
     * @param soFar is told from time to time how far it is
     */
    Result takeIn(Effect.TakeInLogger asked, Book book, BooleanSupplier isStopped, Consumer<Message> soFar);
}
