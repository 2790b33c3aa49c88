// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.Optional;
import sillbook.change.Change;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.State;

/** What opens once a sheet is recorded. */
@FunctionalInterface
public interface Sequel {
    /** Nothing does. */
    Sequel NONE = (state, recorded) -> Optional.empty();

    /** The layer to go on with; empty for what the sheet was opened over. */
    Optional<Layer> after(State state, Change recorded);
}
