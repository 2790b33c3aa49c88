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
import sillbook.model.Pot.Planting;
import sillbook.model.Proposal.Course;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.plan.Candidate.InCold;
import sillbook.plan.Candidate.Settled;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.ColdNeed;
import sillbook.season.Forcing;
import sillbook.season.Outlook;
import sillbook.season.Phase;
import sillbook.season.PotNow;
import sillbook.season.Stay;

/** The pots of the season that are there already, each as far as it has come; what has happened is not planned anew. */
record PotsThere(Journal journal, Outlook outlook, Season season, Making making) {

    /** Those that are growing, or wait for their bulbs; a pot that waits for bulbs which are no longer to be had is none. */
    List<Candidate> growing() {
        List<PotNow> there = pots().stream().filter(now -> !hasEnded(now)).toList();
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

    /** Those whose winter is over, with the days on which they flowered. */
    List<Candidate> ended() {
        return pots().stream().filter(PotsThere::hasEnded).map(this::candidate).toList();
    }

    private List<PotNow> pots() {
        return outlook.pots(season).stream()
                .filter(now -> now.life().pot().season().equals(season))
                .toList();
    }

    private static boolean hasEnded(PotNow now) {
        return now.life().stage() == Stage.DONE || now.life().isFailed();
    }

    private static boolean isWaiting(PotNow now) {
        return now.life().potted().isEmpty() && !hasEnded(now);
    }

    private Candidate candidate(PotNow now) {
        Pot pot = now.life().pot();
        Planting bulbs = isWaiting(now) ? asSent(pot.first()) : pot.first();
        Forcing forcing = making.forcing(bulbs);
        LocalDate from = Dates.later(outlook.day(), forcing.potting().earliest());
        boolean isOut = Stage.COLD.isBefore(now.life().stage()) || hasEnded(now);
        return new Candidate(
                journal.varieties().get(bulbs.variety()),
                bulbs.count(),
                bulbs.purchase(),
                pot.container(),
                Optional.of(pot.id()),
                forcing,
                from,
                making.fit(forcing, from),
                isWaiting(now) || isOut ? Optional.empty() : Optional.of(inCold(now)),
                isOut ? Optional.of(settled(now)) : Optional.empty());
    }

    /** Of bulbs that still wait: the variety that came, where another was sent than was ordered. */
    private Planting asSent(Planting planned) {
        return planned.purchase()
                .flatMap(journal.purchases()::find)
                .map(purchase -> new Planting(purchase.variety(), planned.count(), planned.purchase()))
                .orElse(planned);
    }

    /** From the day its usual weeks of cold are had, whatever a plan or a wish says, as long as it may wait. */
    private InCold inCold(PotNow now) {
        Optional<LocalDate> enough = now.coldAhead()
                .flatMap(ahead -> now.coldNeed().map(ColdNeed::potted).map(need -> ahead.reaches(need.typical())));
        LocalDate first = Dates.later(outlook.day(), enough.orElse(outlook.day()));
        LocalDate last = Dates.later(first, now.useBy().orElse(first));
        return new InCold(potted(now), now.life().stands().map(Stay::place), DaySpan.ofInclusive(first, last));
    }

    private LocalDate potted(PotNow now) {
        return now.life().potted().map(Day::likely).orElse(outlook.day());
    }

    /** As it went, and, of one that is growing, as it is foretold to go on; one that never flowered has no such days. */
    private Settled settled(PotNow now) {
        List<Phase> phases = hasEnded(now)
                ? now.life().phases()
                : outlook.line(now.life().pot().id()).phases();
        LocalDate in = begin(phases, Stage.COOL_ROOM)
                .or(() -> begin(phases, Stage.WARM_ROOM))
                .or(() -> begin(phases, Stage.IN_BLOOM))
                .orElse(potted(now));
        LocalDate from = begin(phases, Stage.IN_BLOOM).orElse(in);
        LocalDate to = phases.stream()
                .filter(phase -> phase.stage() == Stage.IN_BLOOM)
                .map(phase -> phase.days().endExclusive())
                .reduce((one, later) -> later)
                .orElse(from);
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
