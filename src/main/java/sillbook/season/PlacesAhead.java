// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;

/**
 * Where pots stand on a day to come, if each is carried on its likely day.
 *
 * <p>No place takes more than it has room for. A pot for which there is none stays where it is until there is, and all
 * that follows is so much later. On a day when room is short the pots that are furthest on go first, so that what they
 * leave is free for the others. A stage that no place serves, as in a house without a cool room, is spent where the pot
 * stands.
 */
final class PlacesAhead {
    private static final Comparator<Pace> FURTHEST_FIRST =
            Comparator.<Pace, Stage>comparing(pace -> pace.wanted).reversed();

    private final Destinations destinations;
    private final Occupancy occupancy;
    private final List<Pace> paces;
    private LocalDate day;

    /** Begins on the day of the lines, with the pots as they stand then. */
    PlacesAhead(Collection<PotNow> pots, Lines lines, Destinations destinations) {
        this.destinations = destinations;
        this.occupancy = Occupancy.of(pots.stream().map(PotNow::life).toList());
        this.paces = pots.stream().map(pot -> new Pace(pot, lines.of(pot))).toList();
        this.day = lines.today();
    }

    /** A pot on its way. */
    private static final class Pace {
        private final Pot pot;
        private final List<Phase> phases;
        private Optional<Id<Place>> place;
        private Stage stage;
        private Stage wanted;
        private int daysKept;

        Pace(PotNow now, List<Phase> phases) {
            this.pot = now.life().pot();
            this.phases = phases;
            this.place = now.life().stands().map(Stay::place);
            this.stage = now.life().stage();
            this.wanted = stage;
        }

        /** Its stage by its own pace; done when nothing more is foretold. */
        Stage on(LocalDate day) {
            LocalDate own = day.minusDays(daysKept);
            return phases.stream()
                    .filter(phase -> phase.days().contains(own))
                    .findFirst()
                    .map(Phase::stage)
                    .orElse(Stage.DONE);
        }

        /** Whether it should have been carried somewhere, and was not for want of room. */
        boolean isKept() {
            return place.isPresent() && wanted != stage;
        }
    }

    /** Goes on to a day, which may not lie before the one it is at. */
    PlacesAhead to(LocalDate until) {
        while (day.isBefore(until)) {
            day = day.plusDays(1);
            paces.forEach(this::turn);
            paces.stream().sorted(FURTHEST_FIRST).forEach(this::carry);
        }
        return this;
    }

    /** What the day asks of a pot: to be gone, to go on where it stands, or to be carried. */
    private void turn(Pace pace) {
        pace.wanted = pace.on(day);
        if (pace.wanted == Stage.DONE) {
            pace.place.ifPresent(occupancy::leaves);
            pace.place = Optional.empty();
        }
        if (!pace.wanted.isBefore(Stage.IN_BLOOM) || !destinations.isServed(pace.wanted)) {
            pace.stage = pace.wanted;
        }
    }

    private void carry(Pace pace) {
        if (pace.wanted == pace.stage) {
            return;
        }
        Optional<Destination> to = destinations.suggest(pace.pot, pace.wanted, pace.place, occupancy, day);
        if (to.isPresent()) {
            pace.place.ifPresent(occupancy::leaves);
            pace.place = to.map(Destination::place);
            pace.place.ifPresent(occupancy::comes);
            pace.stage = pace.wanted;
        } else {
            pace.daysKept++;
        }
    }

    /** Those at a place, in the order given. */
    List<Id<Pot>> at(Id<Place> place) {
        return pots(place, false);
    }

    /** Those of them that would have gone on, had there been room for them elsewhere. */
    List<Id<Pot>> keptAt(Id<Place> place) {
        return pots(place, true);
    }

    private List<Id<Pot>> pots(Id<Place> place, boolean onlyKept) {
        List<Id<Pot>> there = new ArrayList<>();
        for (Pace pace : paces) {
            if (pace.place.equals(Optional.of(place)) && (pace.isKept() || !onlyKept)) {
                there.add(pace.pot.id());
            }
        }
        return there;
    }
}
