// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Origin;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.model.Variety;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/** The jobs of a pot from its first flower on: to stand cooler, to be scored, to be past, to be cleared away. */
final class FlowerJobs {
    private static final Set<Care> ENDS_AFTERCARE =
            EnumSet.of(Care.PLANTED_OUT, Care.REPOTTED, Care.RESTED, Care.LEAVES_CUT);

    /** An outcome that was not written in bloom is best written while it is fresh, within two weeks (common practice). */
    private static final DayCount OUTCOME = DayCount.ofWeeks(0, 0, 2);

    /** Leaves are left until they are yellow, some six to eight weeks after the flower (common practice). */
    private static final DayCount LEAVES_DIE = DayCount.ofWeeks(0, 6, 8);

    /** What needs no cold is cleared away, or its stalk cut, when it is past bloom (common practice). */
    private static final DayCount AT_ONCE = DayCount.ofWeeks(0, 0, 6);

    private final JobSite site;
    private final Foretold pot;
    private final LocalDate today;

    FlowerJobs(JobSite site) {
        this.site = site;
        this.pot = site.pot();
        this.today = site.today();
    }

    List<JobKind> inBloom() {
        boolean couldStandCooler = site.here()
                        .filter(place -> site.neighbours().serves(place, Stage.WARM_ROOM))
                        .isPresent()
                && site.destination(Stage.COOL_ROOM).isPresent()
                && today.isBefore(site.window(Milestone.AFTER_BLOOM).likely());
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
        return today.isBefore(site.window(Milestone.AFTER_BLOOM).likely())
                && !isPutOff
                && !unscored().isEmpty();
    }

    private List<Optional<Id<Variety>>> unscored() {
        Pot inPot = pot.life().pot();
        return pot.life().bloom().unscored(inPot, site.neighbours().outcomes(pot.life()), today);
    }

    /** When the first of them that is to be scored was at its best. */
    private LocalDate fullBloom() {
        return unscored().stream()
                .flatMap(one -> pot.life().bloom().best(one).stream())
                .min(Comparator.naturalOrder())
                .orElse(today);
    }

    List<JobKind> afterBloom(YearJobs year) {
        List<JobKind> kinds = new ArrayList<>();
        Pot past = pot.life().pot();
        if (!past.isJudged(site.neighbours().outcomes(pot.life()))) {
            kinds.add(JobKind.WRITE_OUTCOME);
        }
        if (pot.figures().livesOn()) {
            kinds.addAll(year.afterBloom());
            return kinds;
        }
        boolean isCaredFor = pot.life().cares().stream()
                .anyMatch(care -> ENDS_AFTERCARE.contains(care.value())
                        && !care.day().likely().isBefore(pot.begun()));
        if (!isCaredFor) {
            kinds.add(JobKind.AFTERCARE);
        }
        return kinds;
    }

    List<JobKind> done(End end) {
        Pot done = pot.life().pot();
        boolean isAsked = switch (end) {
            case FINISHED -> !done.isJudged(site.neighbours().outcomes(pot.life()));
            case FAILED -> site.neighbours().outcomes(pot.life()).isEmpty();
            case SOLD, GIVEN, BROKEN, USED_UP -> false;
        };
        return isAsked ? List.of(JobKind.WRITE_OUTCOME) : List.of();
    }

    Job.OfPots keepCool() {
        LocalDate past = site.window(Milestone.AFTER_BLOOM).likely();
        return site.draft(JobKind.KEEP_COOL_IN_BLOOM, new Window(pot.begun(), pot.begun(), past), Stage.IN_BLOOM)
                .to(site.destination(Stage.COOL_ROOM))
                .mayWait()
                .on(past)
                .job();
    }

    Job.OfPots pastBloom() {
        Window window = site.window(Milestone.AFTER_BLOOM);
        boolean isAssumed = pot.figures()
                .find(FigureName.IN_BLOOM)
                .map(FigureInForce::origin)
                .filter(Origin.ASSUMED::equals)
                .isPresent();
        return site.draft(JobKind.PAST_BLOOM, window, Stage.AFTER_BLOOM)
                .on(isAssumed ? window.latest() : window.likely())
                .job();
    }

    Job.OfPots writeOutcome() {
        if (pot.life().stage() == Stage.IN_BLOOM) {
            LocalDate past = site.window(Milestone.AFTER_BLOOM).likely();
            return site.draft(JobKind.WRITE_OUTCOME, new Window(pot.begun(), fullBloom(), past), Stage.IN_BLOOM)
                    .job();
        }
        return site.draft(JobKind.WRITE_OUTCOME, since(OUTCOME), pot.life().stage())
                .job();
    }

    Job.OfPots aftercare() {
        return site.draft(JobKind.AFTERCARE, since(aftercare(pot.figures())), Stage.AFTER_BLOOM)
                .job();
    }

    /** The likely day of its aftercare. */
    static LocalDate aftercareOn(LocalDate pastBloom, PotFigures figures) {
        return pastBloom.plusDays(aftercare(figures).typical());
    }

    private static DayCount aftercare(PotFigures figures) {
        return figures.needsCold() ? LEAVES_DIE : AT_ONCE;
    }

    private Window since(DayCount length) {
        return Window.on(pot.begun()).plus(length);
    }
}
