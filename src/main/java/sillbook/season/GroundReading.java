// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.reckon.cold.ColdWeight;

/** Foretells how cold the ground of a place will be in the winter of a day. */
record GroundReading(Journal journal, LocalDate today) {

    /** The same of a place, without its reasons. */
    Optional<GroundForetold> of(Id<Place> place) {
        return why(journal.places().get(place)).map(WhyGround::result);
    }

    /** What is to be done at trenches, today or within 14 days, the nearest first. */
    List<Job.OfGround> jobs(Standings standings, Collection<PotNow> pots) {
        return journal.trenches().all().stream()
                .flatMap(trench -> of(trench.place()).stream())
                .flatMap(ground -> new GroundJobs(journal, today, ground, standings, pots).list().stream())
                .filter(job -> job.due() != Due.LATER)
                .sorted(Comparator.comparing(Job.OfGround::on))
                .toList();
    }

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
