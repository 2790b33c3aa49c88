// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import sillbook.handbook.FigureName;
import sillbook.handbook.Origin;
import sillbook.model.OwnFigure.Range;

/**
 * A figure that went into a reckoning.
 *
 * @param range in the unit of the name
 * @param origin whose it is: {@code given}, {@code handbook} or {@code assumed}
 * @param sources who published it, by their keys in the handbook; none when nobody did
 */
public record UsedFigure(FigureName name, Range range, String origin, List<String> sources) {
    public UsedFigure {
        sources = List.copyOf(sources);
    }

    /** Whether nobody gave or published it. */
    public boolean isAssumed() {
        return origin.equals(Origin.ASSUMED.word());
    }
}
