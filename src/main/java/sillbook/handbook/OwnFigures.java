// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.Optional;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;

/** Where the figures are found that the grower has set over the handbook's. */
@FunctionalInterface
public interface OwnFigures {
    /** For a grower who has set none. */
    OwnFigures NONE = (scope, name) -> Optional.empty();

    /** The figure set for exactly this scope, in the unit of its name. */
    Optional<Range> find(Scope scope, FigureName name);
}
