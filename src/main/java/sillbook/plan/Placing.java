// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.SeasonPlan.Rule;
import sillbook.plan.Candidate.InCold;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;

/** Finds pots their potting days and places, one after the other: where there is room, as long as there is any. */
final class Placing {
    private final Planning planning;
    private final PottingDays pottingDays;
    private final Loads loads = new Loads();

    Placing(Planning planning, Rule rule) {
        this.planning = planning;
        this.pottingDays = new PottingDays(rule);
    }

    /** A pot that comes in on a day, put where there is room for it. */
    Proposal place(Candidate candidate, LocalDate in) {
        DaySpan blooms = DaySpan.of(in, gone(in, candidate.forcing().pastBloom(in)));
        Optional<Berth> room = loads.firstWithRoom(
                planning.rooms().stream().filter(berth -> berth.isThere(in)).toList(), blooms);
        return place(candidate, in, Optional.empty(), room.map(Berth::id));
    }

    /** The same with places that are given; a cold place that is not is looked for. */
    Proposal place(Candidate candidate, LocalDate in, Optional<Id<Place>> cold, Optional<Id<Place>> room) {
        Course course = course(candidate, in, cold, room);
        loads.stand(course, gone(in, candidate.forcing().pastBloom(in)));
        return candidate.on(course);
    }

    private Course course(Candidate candidate, LocalDate in, Optional<Id<Place>> cold, Optional<Id<Place>> room) {
        if (candidate.cold().isPresent()) {
            InCold there = candidate.cold().get();
            return new Course(there.potted(), there.place(), in, room);
        }
        if (!candidate.needsCold()) {
            pottingDays.take(in);
            return new Course(in, Optional.empty(), in, room);
        }
        Optional<Berth> berth = berth(candidate, in, cold);
        LocalDate last = berth.flatMap(where -> candidate.fit().potting(where, in))
                .orElseGet(() -> in.minusDays(candidate.forcing().usualCold()));
        LocalDate first = Dates.later(
                candidate.readyFrom(), in.minusDays(candidate.forcing().mostCold()));
        return new Course(pottingDays.take(first, last), berth.map(Berth::id), in, room);
    }

    /** The place that is given; else of those that are cold for long enough the first with room. */
    private Optional<Berth> berth(Candidate candidate, LocalDate in, Optional<Id<Place>> given) {
        List<Berth> fitting = candidate.fit().fitting(planning.colds(), in).stream()
                .filter(berth ->
                        given.filter(place -> !place.equals(berth.id())).isEmpty())
                .toList();
        DaySpan days = DaySpan.of(in.minusDays(Math.max(1, candidate.forcing().usualCold())), in);
        return loads.firstWithRoom(fitting, days).or(() -> given.flatMap(planning::cold));
    }

    /** A pot that is out of the cold, as it goes on. */
    Proposal settled(Candidate candidate) {
        Candidate.Settled settled = candidate.settled().orElseThrow();
        loads.stand(
                settled.course(), gone(settled.course().in(), settled.flowers().endExclusive()));
        return candidate.on(settled.course());
    }

    /** It stands there for a day at least. */
    static LocalDate gone(LocalDate in, LocalDate past) {
        return Dates.later(in.plusDays(1), past);
    }

    /** By the day they come in. */
    static List<Proposal> inOrder(List<Proposal> pots) {
        return pots.stream()
                .sorted(Comparator.comparing((Proposal pot) -> pot.course().in()))
                .toList();
    }
}
