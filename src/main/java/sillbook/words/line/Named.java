// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Entity;

/** Something called by its name: in the journal already, or to be written down with this line. */
record Named<T extends Entity<T>>(T thing, boolean isNew) {

    /** The change as it is, or with the new thing written down before it. */
    Change together(Change change) {
        return isNew ? new Together("", List.of(new WriteDown(thing), change)) : change;
    }
}
