// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;

/**
 * Draws the winter of a pot as phases: those that were, and those the likely days foretell.
 *
 * @param seasonFrom the first day of the season, on which a pot's waiting begins
 */
record Lines(LocalDate seasonFrom, LocalDate seasonEndExclusive, LocalDate today) {

    /** In order of days and without a gap, to the end of what is known of it. */
    List<Phase> of(PotNow pot) {
        List<Phase> phases = new ArrayList<>();
        waited(pot).ifPresent(phases::add);
        phases.addAll(pot.life().phases());
        phases.addAll(foretold(pot));
        return phases;
    }

    /** From the season's first day to the potting; no longer than today. */
    private Optional<Phase> waited(PotNow pot) {
        LocalDate end = pot.life().phases().stream()
                .findFirst()
                .map(phase -> phase.days().start())
                .orElse(tomorrow());
        return phase(Stage.WAITING, Optional.empty(), seasonFrom, end, true);
    }

    /** A bloom stays where it opened; where a pot will be carried is for {@link PlacesAhead} to say. */
    private List<Phase> foretold(PotNow pot) {
        List<Phase> phases = new ArrayList<>();
        Stage stage = pot.life().stage();
        Optional<Id<Place>> place = pot.life().stands().map(Stay::place);
        LocalDate from = tomorrow();
        for (Ahead ahead : pot.ahead()) {
            LocalDate begins = Dates.later(from, ahead.window().likely());
            phase(stage, place, from, begins, false).ifPresent(phases::add);
            place = ahead.stage().isBefore(Stage.IN_BLOOM) ? Optional.empty() : place;
            stage = ahead.stage();
            from = begins;
        }
        phase(stage, place, from, end(pot, from), false).ifPresent(phases::add);
        return phases;
    }

    /** What is past bloom is drawn until its aftercare, or to the end where it lives on; what is done no longer, what has no next stage to the end. */
    private LocalDate end(PotNow pot, LocalDate from) {
        if (pot.life().stage() == Stage.DONE) {
            return from;
        }
        boolean isPastBloom = pot.life().stage() == Stage.AFTER_BLOOM;
        if (isPastBloom ? pot.figures().livesOn() : pot.ahead().isEmpty()) {
            return Dates.later(from, seasonEndExclusive);
        }
        LocalDate pastBloom = pot.ahead().stream()
                .reduce((one, last) -> last)
                .map(last -> last.window().likely())
                .orElseGet(() -> pot.life().standing().begun().orElseThrow().likely());
        return Dates.later(from, FlowerJobs.aftercareOn(pastBloom, pot.figures()));
    }

    private static Optional<Phase> phase(
            Stage stage, Optional<Id<Place>> place, LocalDate from, LocalDate endExclusive, boolean happened) {
        return from.isBefore(endExclusive)
                ? Optional.of(new Phase(stage, place, DaySpan.of(from, endExclusive), happened))
                : Optional.empty();
    }

    private LocalDate tomorrow() {
        return today.plusDays(1);
    }
}
