// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureName;
import sillbook.model.Findings.Growth;
import sillbook.model.JobKind;
import sillbook.model.Stage;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/** Finds the one next job of a pot; from its first flower on {@link FlowerJobs} does. The rules stand in docs/jobs.md. */
final class NextJob implements Standing.Cases<List<JobKind>> {
    private final Foretold pot;
    private final Neighbours neighbours;
    private final LocalDate today;
    private final JobSite site;
    private final FlowerJobs flower;
    private final YearJobs year;

    NextJob(Foretold pot, Neighbours neighbours) {
        this.pot = pot;
        this.neighbours = neighbours;
        this.today = pot.today();
        this.site = new JobSite(pot, neighbours);
        this.flower = new FlowerJobs(site);
        this.year = new YearJobs(site);
    }

    /** The next job; empty when nothing is left, or all that is left was left out. */
    Optional<Job.OfPots> find() {
        return pot.life().standing().fold(this).stream()
                .filter(kind -> !pot.life().answers().isLeftOut(kind))
                .findFirst()
                .map(this::job);
    }

    @Override
    public List<JobKind> waiting(Standing.Waiting standing) {
        return List.of(JobKind.POT_UP);
    }

    @Override
    public List<JobKind> potted(Standing.Potted standing) {
        return List.of(pot.pins().wantsCold() ? JobKind.INTO_COLD : JobKind.BRING_IN);
    }

    @Override
    public List<JobKind> inCold(Standing.InCold standing) {
        return colder().isPresent() ? List.of(JobKind.INTO_COLD, JobKind.BRING_IN) : List.of(JobKind.BRING_IN);
    }

    @Override
    public List<JobKind> inCoolRoom(Standing.InCoolRoom standing) {
        return pot.pins().wantsCold()
                ? List.of(JobKind.INTO_COLD)
                : List.of(JobKind.MOVE_TO_WARMTH, JobKind.WATCH_FOR_FLOWER);
    }

    @Override
    public List<JobKind> inWarmRoom(Standing.InWarmRoom standing) {
        if (pot.pins().wantsCold()) {
            return List.of(JobKind.INTO_COLD);
        }
        return year.wantsRepotting()
                ? List.of(JobKind.REPOT, JobKind.WATCH_FOR_FLOWER)
                : List.of(JobKind.WATCH_FOR_FLOWER);
    }

    @Override
    public List<JobKind> inBloom(Standing.InBloom standing) {
        return flower.inBloom();
    }

    @Override
    public List<JobKind> afterBloom(Standing.AfterBloom standing) {
        return flower.afterBloom(year);
    }

    @Override
    public List<JobKind> done(Standing.Done standing) {
        return flower.done(standing.end());
    }

    private Job.OfPots job(JobKind kind) {
        return switch (kind) {
            case POT_UP -> potUp();
            case INTO_COLD -> intoCold();
            case BRING_IN -> bringIn();
            case MOVE_TO_WARMTH -> moveToWarmth();
            case WATCH_FOR_FLOWER -> watchForFlower();
            case KEEP_COOL_IN_BLOOM -> flower.keepCool();
            case PAST_BLOOM -> flower.pastBloom();
            case WRITE_OUTCOME -> flower.writeOutcome();
            case AFTERCARE -> flower.aftercare();
            case FEED, PUT_OUTDOORS, TAKE_INDOORS, START_REST, WAKE, REPOT -> year.job(kind);
            case CHECK, DAILY_CARE, DIG_TRENCH, POTS_IN, COVER_TRENCH, LIFT_POTS ->
                throw new IllegalArgumentException(kind + " is asked for by place");
        };
    }

    private Job.OfPots potUp() {
        Stage stage = AheadReading.stage(nextMilestone());
        JobDraft draft = site.draft(JobKind.POT_UP, site.window(nextMilestone()), stage)
                .by(byWish())
                .byAnswer();
        return neighbours.areBulbsInHand(pot.life().pot())
                ? draft.job()
                : draft.notYet().job();
    }

    private Job.OfPots intoCold() {
        if (pot.pins().wantsCold()) {
            return site.draft(JobKind.INTO_COLD, site.window(Milestone.COLD), Stage.COLD)
                    .by(byWish())
                    .job();
        }
        return site.draft(JobKind.INTO_COLD, Window.on(today), Stage.COLD)
                .to(colder())
                .job();
    }

    private Job.OfPots bringIn() {
        Milestone room = pot.windows().containsKey(Milestone.COOL_ROOM) ? Milestone.COOL_ROOM : Milestone.WARM_ROOM;
        JobDraft draft = site.draft(JobKind.BRING_IN, site.window(room), AheadReading.stage(room));
        return pot.readiness().map(ready -> bringIn(draft, ready)).orElseGet(draft::job);
    }

    private Job.OfPots bringIn(JobDraft draft, Readiness ready) {
        Optional<Deadline> useBy = pot.useBy().map(Deadline.UseBy::new);
        return switch (ready.verdict()) {
            case MAY_COME_IN ->
                draft.mayWait().by(useBy).by(byWish()).on(lastGoodDay(draft)).job();
            case CHECK_FIRST ->
                draft.by(useBy).by(byWish()).on(ready.coldEnoughOn()).job();
            case NO_ROOTS ->
                draft.by(useBy).on(ready.lookAgainOn().orElse(today)).job();
            case WEEKS_SHORT, TOO_WARM ->
                draft.by(useBy).on(ready.coldEnoughOn()).cannotYet().job();
        };
    }

    private LocalDate lastGoodDay(JobDraft draft) {
        boolean hasItsDay = pot.wish().isPresent() || pot.isPlanned();
        return hasItsDay ? draft.window().likely() : draft.window().latest();
    }

    private Job.OfPots moveToWarmth() {
        Window window = site.window(Milestone.WARM_ROOM);
        JobDraft draft =
                site.draft(JobKind.MOVE_TO_WARMTH, window, Stage.WARM_ROOM).by(byWish());
        if (pot.wish().isEmpty() && hasSignForWarmth()) {
            draft.on(today);
        }
        return today.isBefore(window.earliest()) ? draft.cannotYet().job() : draft.job();
    }

    /** Leaves tall enough, or buds: signs go before days. */
    private boolean hasSignForWarmth() {
        if (pot.life().seen().growth().contains(Growth.BUDS)) {
            return true;
        }
        Optional<Double> enough = pot.figures()
                .find(FigureName.WARM_SHOOT)
                .map(figure -> figure.range().low());
        return pot.life()
                .seen()
                .shoot()
                .flatMap(seen -> enough.filter(least -> seen.value().centimetres() >= least))
                .isPresent();
    }

    private Job.OfPots watchForFlower() {
        Window window = site.window(Milestone.BLOOM);
        return site.draft(JobKind.WATCH_FOR_FLOWER, window, Stage.IN_BLOOM)
                .on(window.latest())
                .job();
    }

    /** A colder place for a pot that stands too warm. */
    private Optional<Destination> colder() {
        boolean isTooWarm = pot.readiness()
                .filter(ready -> ready.verdict() == Verdict.TOO_WARM)
                .isPresent();
        return site.here().filter(place -> isTooWarm).flatMap(neighbours::colderThan);
    }

    private Optional<Deadline> byWish() {
        return pot.wish().flatMap(now -> now.by().map(day -> new Deadline.ForWish(day, now.wish())));
    }

    private Milestone nextMilestone() {
        return pot.prospect().next().orElseThrow();
    }
}
