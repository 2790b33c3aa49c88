// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Batch;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;

/** Draws together the pots of a batch that agree. */
final class Batches {
    private final Map<Id<Batch>, BatchShare> shares = new HashMap<>();
    private final Map<Id<Pot>, Pot> pots = new HashMap<>();

    Batches(Collection<PotLife> lives) {
        Map<Id<Batch>, List<PotLife>> members = new LinkedHashMap<>();
        lives.stream().sorted(ByLabel.OF_LIVES).forEach(life -> {
            pots.put(life.pot().id(), life.pot());
            if (life.stage() != Stage.DONE) {
                life.pot()
                        .batch()
                        .ifPresent(batch -> members.computeIfAbsent(batch, id -> new ArrayList<>())
                                .add(life));
            }
        });
        members.forEach((batch, together) -> {
            if (together.size() > 1) {
                shares.put(batch, share(batch, together));
            }
        });
    }

    private static BatchShare share(Id<Batch> batch, List<PotLife> members) {
        Map<Stage, Integer> counts = new EnumMap<>(Stage.class);
        members.forEach(life -> counts.merge(life.stage(), 1, Integer::sum));
        return new BatchShare(
                batch, members.stream().map(life -> life.pot().id()).toList(), counts);
    }

    /** The batch a pot is part of, while it and others of it are not done. */
    Optional<BatchShare> of(Pot pot) {
        return pot.batch()
                .flatMap(batch -> Optional.ofNullable(shares.get(batch)))
                .filter(share -> share.pots().contains(pot.id()));
    }

    /** The jobs with those of one batch that agree as one; the row of most of a batch stands for all of it. */
    List<Job.OfPots> together(Collection<Job.OfPots> ofSingles) {
        Map<Likeness, List<Job.OfPots>> groups = new LinkedHashMap<>();
        ofSingles.stream()
                .sorted((one, other) -> ByLabel.OF_POTS.compare(potOf(one), potOf(other)))
                .forEach(job -> groups.computeIfAbsent(likeness(job), like -> new ArrayList<>())
                        .add(job));
        Map<Id<Batch>, List<Job.OfPots>> largest = largest(groups.values());
        List<Job.OfPots> together = new ArrayList<>();
        for (List<Job.OfPots> group : groups.values()) {
            Optional<BatchShare> whole =
                    of(potOf(group.get(0))).filter(share -> group.equals(largest.get(share.batch())));
            together.add(longestDue(group).of(ids(group), whole));
        }
        return together;
    }

    /** What is asked today is asked of all together, though it may have fallen due on different days. */
    private static Job.OfPots longestDue(List<Job.OfPots> group) {
        return group.stream().min(Comparator.comparing(Job.OfPots::on)).orElseThrow();
    }

    private static List<Id<Pot>> ids(List<Job.OfPots> jobs) {
        return jobs.stream().map(job -> job.pots().get(0)).toList();
    }

    /** Of each batch the jobs that most of its pots share; of two that as many share, the one of the first label. */
    private Map<Id<Batch>, List<Job.OfPots>> largest(Collection<List<Job.OfPots>> groups) {
        Map<Id<Batch>, List<Job.OfPots>> largest = new HashMap<>();
        for (List<Job.OfPots> group : groups) {
            of(potOf(group.get(0)))
                    .ifPresent(share -> largest.merge(
                            share.batch(), group, (known, other) -> other.size() > known.size() ? other : known));
        }
        return largest;
    }

    private Pot potOf(Job.OfPots job) {
        Pot pot = pots.get(job.pots().get(0));
        if (pot == null) {
            throw new IllegalArgumentException("a job of a pot that is not here: " + job);
        }
        return pot;
    }

    private Likeness likeness(Job.OfPots job) {
        Pot pot = potOf(job);
        Optional<Id<Batch>> batch = of(pot).map(BatchShare::batch);
        boolean isAsked = job.due() == Due.TODAY;
        return new Likeness(
                batch,
                batch.isPresent() ? Optional.empty() : Optional.of(pot.id()),
                job.kind(),
                isAsked ? Optional.empty() : Optional.of(job.window()),
                isAsked ? Optional.empty() : Optional.of(job.on()),
                job.due(),
                job.deadline(),
                job.route().from(),
                job.route().to().map(Destination::place),
                job.readiness().map(Readiness::verdict));
    }

    /**
     * What pots of a batch must have in common to share a row; a pot of no batch shares with none.
     *
     * @param window empty once it is asked for: the days that led there are no matter any more
     * @param on empty likewise
     */
    private record Likeness(
            Optional<Id<Batch>> batch,
            Optional<Id<Pot>> alone,
            JobKind kind,
            Optional<Window> window,
            Optional<LocalDate> on,
            Due due,
            Optional<Deadline> deadline,
            Optional<Id<Place>> from,
            Optional<Id<Place>> to,
            Optional<Verdict> verdict) {}
}
