// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.reckon.cold.ColdWeight;

/** Foretells how cold the ground of a place will be in the winter of a day. */
record GroundReading(Journal journal, LocalDate today) {

    /** Empty where nothing is written of the ground, or a month of its air is not known. */
    Optional<WhyGround> why(Place place) {
        LocalDate firstDay = journal.seasonOf(today).firstDay(journal.settings().seasonStart());
        Band band = place.usual().orElseGet(() -> Band.ofCelsius(ColdWeight.USUAL.full(), ColdWeight.USUAL.fading()));
        return journal.trench(place.id())
                .flatMap(trench -> trench.air()
                        .fold(new AirReading(journal, today))
                        .map(air -> WhyGround.of(trench, air, band, firstDay)));
    }
}
