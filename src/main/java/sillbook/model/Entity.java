// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.stream.Stream;

/**
 * Something the journal holds under an id of its own. Entities are values: a correction is a new value with the same id.
 *
 * @param <T> the entity's own type
 */
public sealed interface Entity<T extends Entity<T>>
        permits Settings,
                OwnKind,
                OwnFigure,
                Variety,
                Purchase,
                PottingMix,
                Container,
                UsualWay,
                Place,
                Space,
                Trench,
                Pot,
                Event,
                SpanReading,
                SpotReading,
                ReadingSource,
                LoggerProfile,
                Thermometer,
                Outcome,
                Wish,
                Choice,
                SeasonPlan,
                Intention,
                PastWindows {
    Id<T> id();

    /** The entries of the same journal that this one names; they must be there as long as it is. */
    default Stream<Id<?>> refersTo() {
        return Stream.empty();
    }
}
