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

    static PlannedPot of(Proposal proposal, Candidate candidate) {
        return candidate
                .settled()
                .map(settled -> new PlannedPot(
                        proposal, candidate, Window.on(settled.flowers().start()), settled.flowers()))
                .orElseGet(() -> ahead(proposal, candidate));
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

    public Course course() {
        return proposal.course();
    }

    /** The day after its last where it flowers. */
    public LocalDate gone() {
        return Dates.later(course().in().plusDays(1), inFlower.endExclusive());
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
