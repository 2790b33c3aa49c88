// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.handbook.FigureName;
import sillbook.model.OwnFigure.Range;

/**
 * A figure that went into a reckoning.
 *
 * @param range in the unit of the name
 * @param origin whose it is: {@code given}, {@code handbook} or {@code assumed}
 * @param source who published it; empty when nobody did
 */
public record UsedFigure(FigureName name, Range range, String origin, Optional<String> source) {}
