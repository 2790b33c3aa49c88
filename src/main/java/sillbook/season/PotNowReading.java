// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Pot;

/** Reads what is true of a pot on a day, and what is to be done with it. */
record PotNowReading(
        Journal journal, Figures figures, Destinations destinations, Neighbours neighbours, LocalDate today) {

    Foretold foretell(PotLife life) {
        return new PotReading(journal, figures, today).foretell(life);
    }

    /** With its next job. */
    PotNow now(PotLife life) {
        Foretold pot = foretell(life);
        return now(pot, new NextJob(pot, neighbours).find());
    }

    /** Nothing is to be done any more with a pot of a winter that is over. */
    PotNow ofOtherWinter(Pot pot) {
        return now(foretell(History.read(journal, pot, today)), Optional.empty());
    }

    private PotNow now(Foretold pot, Optional<Job.OfPots> next) {
        List<Concern> concerns = new ConcernReading(pot, journal, figures, destinations).list();
        Optional<Concern.HeldBack> heldBack = concerns.stream()
                .filter(Concern.HeldBack.class::isInstance)
                .map(Concern.HeldBack.class::cast)
                .findFirst();
        return new PotNow(
                pot.life(),
                pot.figures(),
                pot.coldNeed(),
                pot.prospect().coldAhead(),
                new AheadReading(pot).list(),
                new SignReading(pot).list(),
                pot.readiness(),
                pot.useBy(),
                pot.wish(),
                concerns,
                next.map(job -> heldBack.map(job::heldBack).orElse(job)));
    }
}
