// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.JobKind;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.reckon.dates.DayCount;

/**
 * The jobs of a plant that lives on, from one bloom to the next: fed while in leaf, outdoors for the summer, in, to rest, woken, and
 * every few years repotted.
 *
 * <p>Outdoors from late May, in by the middle or end of September (Iowa State University Extension); weeks of a season hold on both
 * halves of the earth. The rest follows the coming in.
 */
final class YearJobs {
    private static final int DAYS_IN_WEEK = 7;
    private static final int OUTDOORS_FROM_WEEK = 47;
    private static final int INDOORS_FROM_WEEK = 11;
    private static final int INDOORS_BY_WEEK = 13;

    /** A plant is repotted when it is woken, every three years or so (common practice). */
    private static final int YEARS_IN_A_POT = 3;

    /** Repotting is for the first weeks after waking (common practice). */
    private static final int WEEKS_TO_REPOT = 2;

    private final JobSite site;
    private final Foretold pot;
    private final LocalDate today;

    YearJobs(JobSite site) {
        this.site = site;
        this.pot = site.pot();
        this.today = site.today();
    }

    /** What is due now, the most pressing first; then what comes next. */
    List<JobKind> afterBloom() {
        if (pot.life().last(Care.PLANTED_OUT).isPresent()) {
            return List.of();
        }
        if (pot.life().restingSince().isPresent()) {
            return List.of(JobKind.WAKE);
        }
        Comparator<Job.OfPots> nearest = Comparator.comparing(job -> job.on().isBefore(today) ? today : job.on());
        return growing().map(this::job).sorted(nearest).map(Job.OfPots::kind).toList();
    }

    /** The most pressing first, of those that fall due together. */
    private Stream<JobKind> growing() {
        List<JobKind> kinds = new ArrayList<>();
        if (pot.life().isOutdoors()) {
            kinds.add(JobKind.TAKE_INDOORS);
        }
        kinds.add(JobKind.START_REST);
        if (pot.life().last(Care.OUTDOORS).isEmpty()) {
            kinds.add(JobKind.PUT_OUTDOORS);
        }
        if (pot.figures().find(FigureName.FEED).isPresent()) {
            kinds.add(JobKind.FEED);
        }
        return kinds.stream();
    }

    /** Just woken, and too many years in the same potting mix. */
    boolean wantsRepotting() {
        Optional<Day> woken = pot.life().years().woken();
        Stream<Day> filled = Stream.concat(
                pot.life().potted().stream(),
                pot.life().cares().stream()
                        .filter(care -> care.value() == Care.REPOTTED)
                        .map(Noted::day));
        Optional<LocalDate> last = filled.map(Day::likely).max(Comparator.naturalOrder());
        return pot.figures().livesOn()
                && woken.isPresent()
                && last.filter(day -> day.plusYears(YEARS_IN_A_POT)
                                .isAfter(woken.get().likely().plusWeeks(WEEKS_TO_REPOT)))
                        .isEmpty();
    }

    Job.OfPots job(JobKind kind) {
        Stage stage = kind == JobKind.REPOT ? Stage.WARM_ROOM : Stage.AFTER_BLOOM;
        return site.draft(kind, why(kind).result(), stage).to(Optional.empty()).job();
    }

    /** From which day a job is counted, and how far. Where it goes is the grower's to say. */
    WhyOfYear why(JobKind kind) {
        return switch (kind) {
            case FEED -> after(kind, fed(), FigureName.FEED);
            case WAKE -> after(kind, pot.life().restingSince().orElseThrow().likely(), FigureName.REST);
            case PUT_OUTDOORS -> outdoors(kind);
            case TAKE_INDOORS, START_REST -> indoors(kind);
            case REPOT -> WhyOfYear.of(kind, pot.begun(), DayCount.ofWeeks(0, 0, WEEKS_TO_REPOT), List.of());
            default -> throw new IllegalArgumentException(kind + " belongs to no plant that lives on");
        };
    }

    private LocalDate fed() {
        return pot.life()
                .last(Care.FED)
                .map(fed -> fed.day().likely())
                .filter(pot.begun()::isBefore)
                .orElseGet(pot::begun);
    }

    private WhyOfYear after(JobKind kind, LocalDate day, FigureName name) {
        FigureInForce figure = pot.figures().find(name).orElseThrow();
        Range weeks = figure.range();
        DayCount length = DayCount.ofDays(days(weeks.low()), days(weeks.typical()), days(weeks.high()));
        return WhyOfYear.of(kind, day, length, List.of(figure));
    }

    private static double days(double weeks) {
        return Math.min(weeks, Figures.MOST_WEEKS) * DAYS_IN_WEEK;
    }

    /** In the first autumn after its bloom. */
    private WhyOfYear indoors(JobKind kind) {
        DayCount weeks = DayCount.ofWeeks(INDOORS_FROM_WEEK, INDOORS_FROM_WEEK, INDOORS_BY_WEEK);
        return WhyOfYear.of(kind, site.neighbours().firstDay(autumn()), weeks, List.of());
    }

    /** In the spring before that; at once when it was in flower until later. */
    private WhyOfYear outdoors(JobKind kind) {
        LocalDate spring = inWeek(autumn().previous(), OUTDOORS_FROM_WEEK);
        return spring.isBefore(pot.begun())
                ? WhyOfYear.of(kind, pot.begun(), DayCount.ofWeeks(0, 0, 1), List.of())
                : WhyOfYear.of(
                        kind,
                        site.neighbours().firstDay(autumn().previous()),
                        DayCount.ofWeeks(OUTDOORS_FROM_WEEK, OUTDOORS_FROM_WEEK, OUTDOORS_FROM_WEEK + 1),
                        List.of());
    }

    private Season autumn() {
        Season of = site.neighbours().seasonOf(pot.begun());
        return inWeek(of, INDOORS_FROM_WEEK).isBefore(pot.begun()) ? of.next() : of;
    }

    private LocalDate inWeek(Season season, int week) {
        return site.neighbours().firstDay(season).plusWeeks(week);
    }
}
