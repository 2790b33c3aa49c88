// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Stage;
import sillbook.reckon.dates.Judgement;
import sillbook.reckon.dates.Warning;

/** Gathers what the grower should know of one pot. */
final class ConcernReading {
    private final Foretold pot;
    private final Journal journal;
    private final Figures figures;
    private final Destinations destinations;
    private final List<Concern> found = new ArrayList<>();

    ConcernReading(Foretold pot, Journal journal, Figures figures, Destinations destinations) {
        this.pot = pot;
        this.journal = journal;
        this.figures = figures;
        this.destinations = destinations;
    }

    /** In order of weight; none for a pot that is past bloom. */
    List<Concern> list() {
        if (pot.life().stage().isBefore(Stage.IN_BLOOM)) {
            frost();
            inCold();
            schedule();
            WarmSpells.of(journal, pot).ifPresent(found::add);
            pot.wish().flatMap(WishNow::judgement).ifPresent(this::wish);
        }
        if (pot.life().stage().isBefore(Stage.AFTER_BLOOM)) {
            hazards();
            kinds();
        }
        return found;
    }

    private void inCold() {
        pot.readiness().ifPresent(ready -> {
            Optional<LocalDate> useBy = pot.useBy().filter(day -> pot.today().isAfter(day));
            useBy.ifPresent(day -> found.add(new Concern.PastUseBy(day)));
            ready.shoot()
                    .filter(seen -> ready.verdict() == Verdict.TOO_WARM)
                    .ifPresent(seen -> found.add(tooWarm(ready, seen.value())));
            if (ready.coldEnoughOn().isAfter(pot.today())) {
                heldBack(ready.coldEnoughOn()).ifPresent(found::add);
                place().ifPresent(there -> calendar(there, ready.coldEnoughOn()));
            }
            new FirstWeeks(journal, pot.life(), pot.today())
                    .nearFreezing(pot.figures())
                    .ifPresent(found::add);
        });
    }

    private Optional<Concern> heldBack(LocalDate enoughOn) {
        ColdTime cold = pot.life().cold();
        return cold.count().isRead()
                ? new HeldBack(journal, cold.stretches(), pot.today()).find(enoughOn)
                : Optional.empty();
    }

    private void frost() {
        Frost.of(journal, pot.life(), pot.today())
                .ifPresent(frost -> found.add(new Concern.Frozen(
                        frost.place(), frost.lowest(), frost.coldestOn(), frost.on(), frost.lookOn())));
    }

    private Concern tooWarm(Readiness ready, Length shoot) {
        return new Concern.TooWarmHere(
                place().map(Place::id),
                shoot,
                daysFrom(pot.today(), ready.coldEnoughOn()),
                place().flatMap(there -> destinations.colderThan(there.id())));
    }

    private void calendar(Place place, LocalDate coldEnoughOn) {
        ColdCalendar calendar = new ColdCalendar(place.coldDays());
        LocalDate cold = calendar.coldOnOrAfter(pot.today());
        boolean isReadCold = pot.prospect()
                .coldAhead()
                .filter(ahead -> ahead.pace().isRead())
                .isPresent();
        if (cold.isAfter(pot.today()) && !isReadCold) {
            found.add(new Concern.NotCold(place.id(), cold));
        }
        calendar.warmAfter(cold)
                .filter(end -> end.isBefore(coldEnoughOn))
                .ifPresent(end -> found.add(new Concern.ColdEnds(place.id(), end, daysFrom(end, coldEnoughOn))));
    }

    private void schedule() {
        pot.figures().warnings().forEach(this::add);
        for (Prospect.Share share : pot.prospect().shares()) {
            share.schedule(pot.prospect().facts())
                    .ifPresent(schedule -> schedule.warnings().forEach(this::add));
        }
    }

    private void wish(Judgement judgement) {
        switch (judgement.verdict()) {
            case LATE -> add(new Warning.Late(judgement.wish(), judgement.bloom()));
            case TOO_LATE -> add(new Warning.TooLate(judgement.wish(), judgement.bloom()));
            case NOT_REACHABLE ->
                judgement
                        .reason()
                        .ifPresent(why -> add(new Warning.NotReachable(judgement.wish(), judgement.bloom(), why)));
            case REACHABLE -> {}
        }
    }

    private void hazards() {
        place().ifPresent(there -> {
            for (Hazard hazard : Concern.BesideHazard.TOLD) {
                if (there.hazards().contains(hazard)) {
                    found.add(new Concern.BesideHazard(there.id(), hazard));
                }
            }
        });
    }

    private void kinds() {
        for (PotFigures.OfVariety variety : pot.figures().varieties()) {
            if (!figures.isKnown(variety.kind())) {
                once(new Concern.AssumedFigures(variety.kind()));
            }
        }
    }

    private void add(Warning warning) {
        once(new Concern.OfSchedule(warning));
    }

    /** What several varieties, or several schedules, may say. */
    private void once(Concern concern) {
        if (!found.contains(concern)) {
            found.add(concern);
        }
    }

    private Optional<Place> place() {
        return pot.life().stands().map(Stay::place).flatMap(journal.places()::find);
    }

    private static int daysFrom(LocalDate from, LocalDate to) {
        return (int) ChronoUnit.DAYS.between(from, to);
    }
}
