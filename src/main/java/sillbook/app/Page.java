// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.LocalDate;
import sillbook.change.Change;
import sillbook.model.Journal;

/** Where changes are written: the journal, or a rehearsal of it. */
public interface Page {
    /** All that it says by now. */
    Journal readAll();

    /** The day it is where the journal is kept. */
    LocalDate today();

    /** Does a change: one step, or none at all. */
    Result carryOut(Change change);
}
