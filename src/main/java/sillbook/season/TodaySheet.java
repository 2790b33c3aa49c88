// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;

/** Sorts the jobs of a day into the sections they are read in; each job stands in one of them. */
final class TodaySheet {
    /** What waits for flowers is shown with the pots that bloom, or will, until it falls due. */
    private static final Set<JobKind> WITH_FLOWERS =
            EnumSet.of(JobKind.WATCH_FOR_FLOWER, JobKind.KEEP_COOL_IN_BLOOM, JobKind.PAST_BLOOM);

    private static final Comparator<Job.OfPots> SOONEST = Comparator.comparing(Job.OfPots::on);

    private final LocalDate today;
    private final List<Job.OfPots> jobs;
    private final List<Job.Round> rounds;
    private final Set<Id<Pot>> settled = new HashSet<>();
    private final Set<Id<Pot>> lifted = new HashSet<>();

    /**
     * A sheet of these jobs and rounds.
     *
     * @param jobs by label
     * @param ground what is to be done at trenches; pots that are lifted with others are not asked for once more
     */
    TodaySheet(LocalDate today, List<Job.OfPots> jobs, List<Job.Round> rounds, List<Job.OfGround> ground) {
        this.today = today;
        this.jobs = jobs;
        this.rounds = rounds.stream()
                .filter(round -> round.due() == Due.TODAY)
                .map(this::settling)
                .toList();
        this.rounds.forEach(round -> settled.addAll(round.settles()));
        ground.stream().filter(job -> job.kind() == JobKind.LIFT_POTS).forEach(job -> lifted.addAll(job.pots()));
    }

    /** A look for roots is not asked for twice: a round due today asks for it, too. */
    private Job.Round settling(Job.Round round) {
        return round.settling(jobs.stream()
                .filter(job -> waitsForLook(job, round.place()))
                .flatMap(job -> job.pots().stream())
                .toList());
    }

    private static boolean waitsForLook(Job.OfPots job, Id<Place> place) {
        return job.due() == Due.TODAY
                && job.route().from().filter(place::equals).isPresent()
                && job.readiness()
                        .filter(ready -> ready.verdict() == Verdict.CHECK_FIRST)
                        .isPresent();
    }

    List<Job.Round> checks() {
        return rounds;
    }

    /** The most days late first. */
    List<Job.OfPots> late() {
        return sorted(Due.LATE, Comparator.comparing(job -> -job.daysLate(today)));
    }

    /** The nearest deadline first. */
    List<Job.OfPots> ready() {
        Comparator<Job.OfPots> nearest =
                Comparator.comparing(job -> job.deadline().map(Deadline::day).orElse(LocalDate.MAX));
        return sorted(Due.READY, nearest).stream()
                .filter(job -> !WITH_FLOWERS.contains(job.kind()))
                .toList();
    }

    /**
     * By kind of job, but for what a round settles. Of the pots that are to be scored while they bloom one is asked after at a
     * time, the one whose bloom ends first; the others wait with what blooms.
     */
    List<Job.OfPots> due() {
        Optional<Job.OfPots> score = jobs.stream()
                .filter(job -> job.due() == Due.TODAY && isScoreInBloom(job))
                .min(Comparator.comparing(job -> job.window().latest()));
        return sorted(Due.TODAY, Comparator.comparing(Job.OfPots::kind)).stream()
                .filter(job -> !settled.containsAll(job.pots()))
                .filter(job -> !isScoreInBloom(job) || score.filter(job::equals).isPresent())
                .toList();
    }

    private static boolean isScoreInBloom(Job.OfPots job) {
        return job.kind() == JobKind.WRITE_OUTCOME && job.route().stage() == Stage.IN_BLOOM;
    }

    /** What comes within 14 days, or would, were its pots not held back. */
    List<Job.OfPots> soon() {
        return Stream.concat(sorted(Due.SOON, SOONEST).stream(), sorted(Due.LATER, SOONEST).stream())
                .filter(job -> job.due() == Due.SOON || isHeldBack(job))
                .filter(this::isListed)
                .toList();
    }

    List<Job.OfPots> later() {
        return sorted(Due.LATER, SOONEST).stream()
                .filter(job -> isListed(job) && !isHeldBack(job))
                .toList();
    }

    private boolean isListed(Job.OfPots job) {
        return !WITH_FLOWERS.contains(job.kind()) && !lifted.containsAll(job.pots());
    }

    private boolean isHeldBack(Job.OfPots job) {
        return job.heldBack().isPresent() && Due.on(job.onByCalendar(), today) != Due.LATER;
    }

    private List<Job.OfPots> sorted(Due due, Comparator<Job.OfPots> order) {
        List<Job.OfPots> found = new ArrayList<>(jobs);
        found.removeIf(job -> job.due() != due);
        found.sort(order);
        return found;
    }
}
