// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sillbook.change.Answer;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.model.Day;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Subject;
import sillbook.words.Days;
import sillbook.words.Terms;

/** {@code T4 later fri because no room}: the next job of pots, or a place's round, put off or left out. */
final class AnswerForm implements Form {
    private static final Slot<Boolean> LATER = Slot.one(
            "", Senses.flag("later|put off|put off (?:to|until|till)|another day|wait|wait (?:until|till)|until|till"));
    private static final Slot<Boolean> NOT_AT_ALL =
            Slot.one("", Senses.flag("not at all|never|leave out|left out|leave it out|not this time"));
    private static final Slot<JobKind> JOB = Slot.one("job", Senses.oneOf(Terms.JOBS));
    private static final Set<JobKind> OF_GROUND =
            EnumSet.of(JobKind.DIG_TRENCH, JobKind.POTS_IN, JobKind.COVER_TRENCH, JobKind.LIFT_POTS);
    private static final Slot<String> BECAUSE = Slot.one("", Senses.restAfter("because", "for"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "put off",
                "Pots, later and a day, or not at all: their next job is meant, unless another is named. Of a place its round, or a job of its trench where one is named. "
                        + "Because and a reason, if you like.",
                "T4 later fri because the sill is full",
                "T4 not at all because it failed",
                "cellar later +2",
                "trench dig later +5");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, LATER, NOT_AT_ALL, Slots.PLACE, JOB, Slots.COMING_DAY, BECAUSE);
    }

    @Override
    public int wanting(Filled filled) {
        int whose = filled.has(Slots.POTS) || filled.has(Slots.PLACE) ? 0 : 1;
        return whose + (filled.has(LATER) || filled.has(NOT_AT_ALL) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Map<JobKind, List<Subject>> jobs = jobs(filled, draft);
        Optional<LocalDate> until = filled.get(Slots.COMING_DAY).map(Day::likely);
        String reason = filled.get(BECAUSE).orElse("");
        if (filled.has(NOT_AT_ALL)) {
            draft.means("not going to be done");
        } else {
            until.ifPresentOrElse(
                    day -> draft.means("put off to " + Days.full(day) + ", "
                            + Days.away(day, draft.bench().today())),
                    () -> draft.ask(
                            "to which day?",
                            "Put off to which day? Write it too, as fri or +3; or write: not at all."));
        }
        if (!reason.isEmpty()) {
            draft.means("because " + reason);
        }
        List<Change> changes = new ArrayList<>();
        jobs.forEach((job, subjects) ->
                changes.add(new Answer(subjects, job, filled.has(NOT_AT_ALL) ? Optional.empty() : until, reason)));
        if (!changes.isEmpty()) {
            draft.change(changes.size() == 1 ? changes.get(0) : new Together("", changes));
        }
    }

    /** The jobs meant, each with those whose it is. */
    private static Map<JobKind, List<Subject>> jobs(Filled filled, Draft draft) {
        Map<JobKind, List<Subject>> jobs = new LinkedHashMap<>();
        Slots.pots(filled)
                .forEach(pot -> job(pot, filled, draft)
                        .ifPresent(job -> jobs.computeIfAbsent(job, none -> new ArrayList<>())
                                .add(new Subject.OfPot(pot.id()))));
        filled.get(Slots.PLACE).ifPresent(place -> ofPlace(place, filled, jobs, draft));
        if (!filled.has(Slots.POTS) && !filled.has(Slots.PLACE)) {
            Lines.pots(List.of(), draft);
        }
        return jobs;
    }

    private static Optional<JobKind> job(Pot pot, Filled filled, Draft draft) {
        Optional<JobKind> job =
                filled.get(JOB).or(() -> draft.bench().outlook().job(pot.id()).map(next -> next.kind()));
        job.ifPresentOrElse(
                kind -> draft.means(pot.label() + ": " + Terms.JOBS.say(kind)),
                () -> draft.ask(
                        "nothing to do", "Nothing is to be done with " + pot.label() + ", so nothing can be put off."));
        return job;
    }

    /** Its round, unless a job of its ground is named. */
    private static void ofPlace(Place place, Filled filled, Map<JobKind, List<Subject>> jobs, Draft draft) {
        Optional<JobKind> ofGround = filled.get(JOB).filter(OF_GROUND::contains);
        draft.means(ofGround.map(job -> place.name() + ": " + Terms.JOBS.say(job))
                .orElse("the round of the " + place.name()));
        jobs.put(ofGround.orElse(JobKind.CHECK), List.of(new Subject.OfPlace(place.id())));
    }
}
