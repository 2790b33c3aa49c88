// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.Optional;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;
import sillbook.model.Thermometer;

/** The place at which a temperature was read. */
final class ReadPlace {
    private ReadPlace() {}

    /** Empty for an entry that is no reading. */
    static Optional<Id<Place>> of(Entity<?> written) {
        if (written instanceof SpanReading span) {
            return Optional.of(span.place());
        }
        if (written instanceof SpotReading spot) {
            return Optional.of(spot.place());
        }
        if (written instanceof ReadingSource source) {
            return Optional.of(source.place());
        }
        return written instanceof Thermometer thermometer ? Optional.of(thermometer.place()) : Optional.empty();
    }
}
