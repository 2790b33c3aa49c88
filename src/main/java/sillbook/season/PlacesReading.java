// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.season.Today.Attention;

/** What is to be said of the places that pots stand at. */
record PlacesReading(Journal journal, Standings standings, DryBulbs dryBulbs, Rounds rounds, LocalDate today) {

    /** The gravest first; of equals in the order of the journal's places. */
    List<Attention> attention() {
        List<Attention> found = new ArrayList<>();
        for (Place place : journal.places().all()) {
            found.addAll(new ClimateAttention(journal, standings, today).of(place));
            overRoom(place, found);
            notCold(place, found);
            dryLong(place, found);
            unchecked(place, found);
            hazards(place, found);
        }
        found.sort(Comparator.comparing(Gravity::of));
        return found;
    }

    private void overRoom(Place place, List<Attention> found) {
        int pots = standings.count(place.id());
        place.room()
                .filter(room -> pots > room)
                .ifPresent(room -> found.add(new Attention.OverRoom(place.id(), pots, room)));
    }

    /** Only once the cold has begun: a frame in early autumn is waiting, not failing. */
    private void notCold(Place place, List<Attention> found) {
        long waiting = standings.at(place.id()).stream()
                .filter(life -> life.standing() instanceof Standing.InCold)
                .filter(life -> life.cold().began().isPresent())
                .count();
        if (waiting > 0 && !place.coldDays().contains(today) && !isReadCold(place)) {
            found.add(new Attention.NotCold(place.id(), (int) waiting));
        }
    }

    /** What thermometers say goes before the calendar. */
    private boolean isReadCold(Place place) {
        return new ColdReading(journal, today)
                .pace(Optional.of(place.id()), Optional.of(LocalDate.MIN))
                .isReadCold();
    }

    private void dryLong(Place place, List<Attention> found) {
        for (WaitingBulbs bulbs : dryBulbs.lookedAfterAt(place.id())) {
            bulbs.potBy(today).ifPresent(day -> found.add(new Attention.DryLong(place.id(), bulbs, day)));
        }
    }

    private void unchecked(Place place, List<Attention> found) {
        rounds.of(place)
                .filter(round -> today.isAfter(round.window().latest()))
                .ifPresent(round -> found.add(new Attention.Unchecked(place.id(), round.last(), round.everyDays())));
    }

    private void hazards(Place place, List<Attention> found) {
        int pots = standings.count(place.id());
        int bulbs = dryBulbs.lookedAfterAt(place.id()).stream()
                .mapToInt(WaitingBulbs::bulbs)
                .sum();
        for (Hazard hazard : Concern.BesideHazard.TOLD) {
            if (place.hazards().contains(hazard) && pots + bulbs > 0) {
                found.add(new Attention.BesideHazard(place.id(), pots, bulbs, hazard));
            }
        }
    }

    PlaceNow now(Place place, PlacesAhead inTwoWeeks) {
        List<PotLife> there = standings.at(place.id());
        return new PlaceNow(
                place,
                there.stream().map(life -> life.pot().id()).toList(),
                inTwoWeeks.at(place.id()),
                inTwoWeeks.keptAt(place.id()),
                dryBulbs.at(place.id()),
                lastLook(there),
                place.coldDays().contains(today),
                rounds.of(place));
    }

    /** Coming to a place is no look at it. */
    private static Optional<LocalDate> lastLook(List<PotLife> there) {
        return there.stream()
                .flatMap(life -> life.seen().lastLook().stream()
                        .map(Day::likely)
                        .filter(day -> life.stands()
                                .filter(stay -> !day.isBefore(stay.since().likely()))
                                .isPresent()))
                .max(Comparator.naturalOrder());
    }
}
