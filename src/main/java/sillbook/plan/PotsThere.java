// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Proposal.Course;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.plan.Candidate.InCold;
import sillbook.plan.Candidate.Settled;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Ahead;
import sillbook.season.Forcing;
import sillbook.season.Outlook;
import sillbook.season.Phase;
import sillbook.season.PotNow;
import sillbook.season.Stay;

/** The pots of the season that are there already, each as far as it has come; what has happened is not planned anew. */
record PotsThere(Journal journal, Outlook outlook, Season season, Fits fits) {

    /** A pot that waits for bulbs which are no longer to be had is none. */
    List<Candidate> list() {
        List<PotNow> there = outlook.pots(season).stream()
                .filter(pot -> pot.life().pot().season().equals(season))
                .filter(pot -> pot.life().stage() != Stage.DONE && !pot.life().isFailed())
                .toList();
        List<Pot> waiting = there.stream()
                .filter(PotsThere::isWaiting)
                .map(now -> now.life().pot())
                .toList();
        List<Pot> filled = Shares.filled(waiting, journal);
        return there.stream()
                .filter(now -> !isWaiting(now) || filled.contains(now.life().pot()))
                .map(this::candidate)
                .toList();
    }

    private static boolean isWaiting(PotNow now) {
        return now.life().potted().isEmpty();
    }

    private Candidate candidate(PotNow now) {
        Pot pot = now.life().pot();
        Forcing forcing = outlook.forcing(pot.first(), season);
        LocalDate from = Dates.later(outlook.day(), forcing.potting().earliest());
        boolean isOut = Stage.COLD.isBefore(now.life().stage());
        return new Candidate(
                journal.varieties().get(pot.first().variety()),
                pot.first().count(),
                pot.first().purchase(),
                pot.container(),
                Optional.of(pot.id()),
                forcing,
                from,
                fits.of(forcing, from),
                isWaiting(now) || isOut ? Optional.empty() : Optional.of(inCold(now)),
                isOut ? Optional.of(settled(now)) : Optional.empty());
    }

    /** From its likely day on, as long as it may wait. */
    private InCold inCold(PotNow now) {
        LocalDate today = outlook.day();
        Optional<Ahead> out = now.ahead().stream()
                .filter(ahead -> Stage.COLD.isBefore(ahead.stage()))
                .findFirst();
        LocalDate first =
                Dates.later(today, out.map(ahead -> ahead.window().likely()).orElse(today));
        LocalDate last = Dates.later(
                first,
                now.useBy().or(() -> out.map(ahead -> ahead.window().latest())).orElse(first));
        return new InCold(potted(now), now.life().stands().map(Stay::place), DaySpan.ofInclusive(first, last));
    }

    private LocalDate potted(PotNow now) {
        return now.life().potted().map(Day::likely).orElse(outlook.day());
    }

    private Settled settled(PotNow now) {
        List<Phase> phases = outlook.line(now.life().pot().id()).phases();
        LocalDate in = begin(phases, Stage.COOL_ROOM)
                .or(() -> begin(phases, Stage.WARM_ROOM))
                .or(() -> begin(phases, Stage.IN_BLOOM))
                .orElse(outlook.day());
        LocalDate from = begin(phases, Stage.IN_BLOOM).orElse(in);
        LocalDate to = begin(phases, Stage.AFTER_BLOOM).orElse(from);
        return new Settled(
                new Course(Dates.earlier(potted(now), in), Optional.empty(), in, room(now)),
                DaySpan.of(from, Dates.later(from, to)));
    }

    private static Optional<Id<Place>> room(PotNow now) {
        return now.life().stands().map(Stay::place);
    }

    private static Optional<LocalDate> begin(List<Phase> phases, Stage stage) {
        return phases.stream()
                .filter(phase -> phase.stage() == stage)
                .map(phase -> phase.days().start())
                .findFirst();
    }
}
