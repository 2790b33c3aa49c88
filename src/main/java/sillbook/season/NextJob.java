// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Origin;
import sillbook.model.Day;
import sillbook.model.Findings.Growth;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/** Finds the one next job of a pot. The rules stand in docs/jobs.md. */
final class NextJob implements Standing.Cases<List<JobKind>> {
    private static final Set<Care> ENDS_AFTERCARE =
            EnumSet.of(Care.PLANTED_OUT, Care.REPOTTED, Care.RESTED, Care.LEAVES_CUT);

    /** Days from the first flower to full bloom, where nobody wrote it down (common practice). */
    private static final int FULL_BLOOM_AFTER = 3;

    /** An outcome that was not written in bloom is best written while it is fresh, within two weeks (common practice). */
    private static final DayCount OUTCOME = DayCount.ofWeeks(0, 0, 2);

    /** Leaves are left until they are yellow, some six to eight weeks after the flower (common practice). */
    private static final DayCount LEAVES_DIE = DayCount.ofWeeks(0, 6, 8);

    /** What needs no cold is cleared away, or its stalk cut, when it is past bloom (common practice). */
    private static final DayCount AT_ONCE = DayCount.ofWeeks(0, 0, 6);

    private final Foretold pot;
    private final Neighbours neighbours;
    private final LocalDate today;

    NextJob(Foretold pot, Neighbours neighbours) {
        this.pot = pot;
        this.neighbours = neighbours;
        this.today = pot.today();
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
        return List.of(pot.pins().wantsCold() ? JobKind.INTO_COLD : JobKind.WATCH_FOR_FLOWER);
    }

    @Override
    public List<JobKind> inBloom(Standing.InBloom standing) {
        boolean couldStandCooler = here().filter(place -> neighbours.serves(place, Stage.WARM_ROOM))
                        .isPresent()
                && destination(Stage.COOL_ROOM).isPresent()
                && today.isBefore(window(Milestone.AFTER_BLOOM).likely());
        List<JobKind> kinds = new ArrayList<>();
        if (isToBeScored()) {
            kinds.add(JobKind.WRITE_OUTCOME);
        }
        if (couldStandCooler) {
            kinds.add(JobKind.KEEP_COOL_IN_BLOOM);
        }
        kinds.add(JobKind.PAST_BLOOM);
        return kinds;
    }

    /** At its best, and before it is asked whether the bloom is past; one that was put off makes room for what else is due. */
    private boolean isToBeScored() {
        boolean isPutOff = pot.life()
                .answers()
                .delay(JobKind.WRITE_OUTCOME)
                .filter(put -> put.until().isAfter(today))
                .isPresent();
        return !today.isBefore(fullBloom())
                && today.isBefore(window(Milestone.AFTER_BLOOM).likely())
                && !isPutOff
                && !neighbours.hasOutcome(pot.life().pot());
    }

    private LocalDate fullBloom() {
        return pot.life()
                .bloom()
                .pot()
                .fullBloom()
                .map(Day::likely)
                .orElseGet(() -> pot.begun().plusDays(FULL_BLOOM_AFTER));
    }

    @Override
    public List<JobKind> afterBloom(Standing.AfterBloom standing) {
        List<JobKind> kinds = new ArrayList<>();
        if (!neighbours.hasOutcome(pot.life().pot())) {
            kinds.add(JobKind.WRITE_OUTCOME);
        }
        boolean isCaredFor = pot.life().cares().stream()
                .anyMatch(care -> ENDS_AFTERCARE.contains(care.value())
                        && !care.day().likely().isBefore(pot.begun()));
        if (!isCaredFor) {
            kinds.add(JobKind.AFTERCARE);
        }
        return kinds;
    }

    @Override
    public List<JobKind> done(Standing.Done standing) {
        boolean tells = standing.end() == End.FINISHED || standing.end() == End.FAILED;
        return tells && !neighbours.hasOutcome(pot.life().pot()) ? List.of(JobKind.WRITE_OUTCOME) : List.of();
    }

    private Job.OfPots job(JobKind kind) {
        return switch (kind) {
            case POT_UP -> potUp();
            case INTO_COLD -> intoCold();
            case BRING_IN -> bringIn();
            case MOVE_TO_WARMTH -> moveToWarmth();
            case WATCH_FOR_FLOWER -> watchForFlower();
            case KEEP_COOL_IN_BLOOM -> keepCool();
            case PAST_BLOOM -> pastBloom();
            case WRITE_OUTCOME -> writeOutcome();
            case AFTERCARE -> aftercare();
            case CHECK, DAILY_CARE -> throw new IllegalArgumentException(kind + " is asked for by place");
        };
    }

    private Job.OfPots potUp() {
        Stage stage = AheadReading.stage(nextMilestone());
        JobDraft draft = draft(JobKind.POT_UP, window(nextMilestone()), stage).by(byWish());
        return neighbours.areBulbsInHand(pot.life().pot())
                ? draft.job()
                : draft.notYet().job();
    }

    private Job.OfPots intoCold() {
        if (pot.pins().wantsCold()) {
            return draft(JobKind.INTO_COLD, window(Milestone.COLD), Stage.COLD)
                    .by(byWish())
                    .job();
        }
        return draft(JobKind.INTO_COLD, Window.on(today), Stage.COLD)
                .to(colder())
                .job();
    }

    private Job.OfPots bringIn() {
        Milestone room = pot.windows().containsKey(Milestone.COOL_ROOM) ? Milestone.COOL_ROOM : Milestone.WARM_ROOM;
        JobDraft draft = draft(JobKind.BRING_IN, window(room), AheadReading.stage(room));
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
        return pot.wish().isPresent() ? draft.window().likely() : draft.window().latest();
    }

    private Job.OfPots moveToWarmth() {
        Window window = window(Milestone.WARM_ROOM);
        JobDraft draft = draft(JobKind.MOVE_TO_WARMTH, window, Stage.WARM_ROOM).by(byWish());
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
        Window window = window(Milestone.BLOOM);
        return draft(JobKind.WATCH_FOR_FLOWER, window, Stage.IN_BLOOM)
                .on(window.latest())
                .job();
    }

    private Job.OfPots keepCool() {
        LocalDate past = window(Milestone.AFTER_BLOOM).likely();
        return draft(JobKind.KEEP_COOL_IN_BLOOM, new Window(pot.begun(), pot.begun(), past), Stage.IN_BLOOM)
                .to(destination(Stage.COOL_ROOM))
                .mayWait()
                .on(past)
                .job();
    }

    private Job.OfPots pastBloom() {
        Window window = window(Milestone.AFTER_BLOOM);
        boolean isAssumed = pot.figures()
                .find(FigureName.IN_BLOOM)
                .map(FigureInForce::origin)
                .filter(Origin.ASSUMED::equals)
                .isPresent();
        return draft(JobKind.PAST_BLOOM, window, Stage.AFTER_BLOOM)
                .on(isAssumed ? window.latest() : window.likely())
                .job();
    }

    private Job.OfPots writeOutcome() {
        if (pot.life().stage() == Stage.IN_BLOOM) {
            LocalDate past = window(Milestone.AFTER_BLOOM).likely();
            return draft(JobKind.WRITE_OUTCOME, new Window(pot.begun(), fullBloom(), past), Stage.IN_BLOOM)
                    .job();
        }
        return draft(JobKind.WRITE_OUTCOME, since(OUTCOME), pot.life().stage()).job();
    }

    private Job.OfPots aftercare() {
        return draft(JobKind.AFTERCARE, since(aftercare(pot.figures())), Stage.AFTER_BLOOM)
                .job();
    }

    /** The likely day of its aftercare. */
    static LocalDate aftercareOn(LocalDate pastBloom, PotFigures figures) {
        return pastBloom.plusDays(aftercare(figures).typical());
    }

    private static DayCount aftercare(PotFigures figures) {
        return figures.needsCold() ? LEAVES_DIE : AT_ONCE;
    }

    private JobDraft draft(JobKind kind, Window window, Stage stage) {
        return new JobDraft(kind, pot, window, new Route(here(), destination(stage), stage));
    }

    /** Only a move has a destination. */
    private Optional<Destination> destination(Stage stage) {
        return neighbours.suggest(pot.life().pot(), stage, here());
    }

    /** A colder place for a pot that stands too warm. */
    private Optional<Destination> colder() {
        boolean isTooWarm = pot.readiness()
                .filter(ready -> ready.verdict() == Verdict.TOO_WARM)
                .isPresent();
        return here().filter(place -> isTooWarm).flatMap(neighbours::colderThan);
    }

    private Optional<Deadline> byWish() {
        return pot.wish().flatMap(now -> now.by().map(day -> new Deadline.ForWish(day, now.wish())));
    }

    private Optional<Id<Place>> here() {
        return pot.life().stands().map(Stay::place);
    }

    private Window window(Milestone milestone) {
        return Optional.ofNullable(pot.windows().get(milestone)).orElseThrow();
    }

    private Milestone nextMilestone() {
        return pot.prospect().next().orElseThrow();
    }

    private Window since(DayCount length) {
        return Window.on(pot.begun()).plus(length);
    }
}
