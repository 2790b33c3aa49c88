// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.Stage;
import sillbook.model.Wish;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Window;
import sillbook.season.Forcing;
import sillbook.season.Phase;

/**
 * A proposed pot, worked out.
 *
 * @param candidate what it is
 * @param flowers when its first flower opens: a day of one that has opened
 * @param inFlower the likely days in flower
 */
public record PlannedPot(Proposal proposal, Candidate candidate, Window flowers, DaySpan inFlower) {
    private static final int WEEKS_AFTER_BLOOM = 3;

    /** What has happened to a pot that is there goes before what was proposed for it. */
    static PlannedPot of(Proposal proposal, Candidate candidate) {
        if (candidate.settled().isPresent()) {
            Candidate.Settled settled = candidate.settled().get();
            return new PlannedPot(
                    proposal.on(settled.course()),
                    candidate,
                    Window.on(settled.flowers().start()),
                    settled.flowers());
        }
        return ahead(
                candidate
                        .cold()
                        .map(there -> proposal.on(stood(there, proposal.course())))
                        .orElse(proposal),
                candidate);
    }

    /** One that is out of the cold, as it goes on. */
    static PlannedPot of(Candidate settled) {
        return of(settled.on(settled.settled().orElseThrow().course()), settled);
    }

    private static Course stood(Candidate.InCold there, Course planned) {
        return new Course(Dates.earlier(there.potted(), planned.in()), there.place(), planned.in(), planned.room());
    }

    private static PlannedPot ahead(Proposal proposal, Candidate candidate) {
        Forcing forcing = candidate.forcing();
        LocalDate in = proposal.course().in();
        return new PlannedPot(
                proposal,
                candidate,
                forcing.flowersFrom(in),
                DaySpan.of(forcing.firstFlower(in), forcing.pastBloom(in)));
    }

    /** Whether it is what a wish asks for, where the wish wants it. */
    boolean suits(Wish wish) {
        return wish.asks().suits(candidate.variety())
                && wish.asks()
                        .room()
                        .filter(room -> !course().room().equals(Optional.of(room)))
                        .isEmpty();
    }

    public Course course() {
        return proposal.course();
    }

    /** The day after its last where it flowers. */
    public LocalDate gone() {
        return Placing.gone(course().in(), inFlower.endExclusive());
    }

    /** The days from the season's first to a few weeks after its bloom, stage by stage; all of it foretold. */
    public List<Phase> phases(LocalDate from) {
        List<Phase> phases = new ArrayList<>();
        Course course = course();
        Forcing forcing = candidate.forcing();
        LocalDate warm = Dates.earlier(course.in().plusDays(forcing.coolRoom().typical()), inFlower.start());
        add(phases, Stage.WAITING, Optional.empty(), from, course.potting());
        add(phases, Stage.COLD, course.cold(), course.potting(), course.in());
        add(phases, Stage.COOL_ROOM, Optional.empty(), course.in(), warm);
        add(phases, Stage.WARM_ROOM, course.room(), warm, inFlower.start());
        add(phases, Stage.IN_BLOOM, course.room(), inFlower.start(), inFlower.endExclusive());
        LocalDate past = inFlower.endExclusive();
        add(phases, Stage.AFTER_BLOOM, Optional.empty(), past, past.plusWeeks(WEEKS_AFTER_BLOOM));
        return phases;
    }

    private static void add(List<Phase> phases, Stage stage, Optional<Id<Place>> place, LocalDate from, LocalDate to) {
        if (from.isBefore(to)) {
            phases.add(new Phase(stage, place, DaySpan.of(from, to), false));
        }
    }
}
