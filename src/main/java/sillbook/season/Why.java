// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Source;
import sillbook.model.Stage;
import sillbook.model.Wish;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/**
 * Why a figure is what it is: the rule, what went into it, and what came out. What came out can be worked out again
 * from what went in.
 *
 * @param <R> what comes out
 */
public sealed interface Why<R>
        permits Why.ColdSoFar,
                Why.ColdNeeded,
                Why.MayComeIn,
                Why.UseBy,
                Why.NeededForWish,
                Why.StageBegins,
                Why.Late,
                RoundDue,
                WhyOfYear,
                WhyCold,
                WhyGround,
                WhyClimate,
                WhyLearnt {

    /** One answer for each rule. */
    interface Cases<T> {
        T coldSoFar(ColdSoFar why);

        T coldNeeded(ColdNeeded why);

        T mayComeIn(MayComeIn why);

        T useBy(UseBy why);

        T neededForWish(NeededForWish why);

        T stageBegins(StageBegins why);

        T late(Late why);

        T roundDue(RoundDue why);

        T ofYear(WhyOfYear why);

        T coldEnough(WhyCold why);

        T ground(WhyGround why);

        T climate(WhyClimate<?> why);

        T learnt(WhyLearnt why);
    }

    <T> T fold(Cases<T> cases);

    /** What is shown. */
    R result();

    /** The same, worked out again from what went in. */
    R recomputed();

    /** The figures that went in, each with its origin. */
    default List<FigureInForce> figures() {
        return List.of();
    }

    /** Keys of the handbook's sources for the rule itself. */
    default List<String> ruleSources() {
        return List.of(Source.COMMON_PRACTICE);
    }

    /** What would change the result. */
    Set<Lever> levers();

    /** Keys of all sources: of the rule, then of the figures. */
    default List<String> sources() {
        Stream<String> ofFigures = figures().stream().flatMap(figure -> figure.sources().stream());
        return Stream.concat(ruleSources().stream(), ofFigures).distinct().toList();
    }

    /**
     * The cold had so far. A day counts when the pot was potted and stood in the cold, at a place that is cold on that
     * day.
     */
    record ColdSoFar(List<ColdStretch> stretches, ColdCount result) implements Why<ColdCount> {
        public ColdSoFar {
            stretches = List.copyOf(stretches);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.coldSoFar(this);
        }

        @Override
        public ColdCount recomputed() {
            return ColdCount.of(stretches);
        }

        @Override
        public Set<Lever> levers() {
            return result.isRead()
                    ? EnumSet.of(Lever.A_DAY, Lever.A_READING, Lever.COLD_DAYS_OF_PLACE)
                    : EnumSet.of(Lever.A_DAY, Lever.COLD_DAYS_OF_PLACE);
        }
    }

    /** The cold that has to follow potting: the neediest variety's, less the dry cold that counts. */
    record ColdNeeded(List<Prospect.Share> shares, List<FigureInForce> figures, DayCount result)
            implements Why<DayCount> {
        public ColdNeeded {
            shares = List.copyOf(shares);
            figures = List.copyOf(figures);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.coldNeeded(this);
        }

        @Override
        public DayCount recomputed() {
            return ColdNeed.potted(shares).orElse(DayCount.ZERO);
        }

        @Override
        public List<String> ruleSources() {
            return List.of("oklahoma-1994");
        }

        @Override
        public Set<Lever> levers() {
            return EnumSet.of(Lever.OWN_FIGURE, Lever.DRY_COLD);
        }
    }

    /**
     * Whether the pot may come in.
     *
     * @param coldEnoughOn the day its weeks are had
     */
    record MayComeIn(LocalDate coldEnoughOn, Signs signs, LocalDate today, List<FigureInForce> figures, Verdict result)
            implements Why<Verdict> {
        public MayComeIn {
            figures = List.copyOf(figures);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.mayComeIn(this);
        }

        @Override
        public Verdict recomputed() {
            return signs.judge(coldEnoughOn, today).verdict();
        }

        @Override
        public List<String> ruleSources() {
            return List.of("missouri-garden", "consumer-christmas", Source.COMMON_PRACTICE);
        }

        @Override
        public Set<Lever> levers() {
            return EnumSet.of(Lever.A_CHECK, Lever.OWN_FIGURE, Lever.A_DAY);
        }
    }

    /**
     * The last good day in the cold.
     *
     * @param cold what is to come of it
     */
    record UseBy(ColdAhead cold, DayCount potted, List<FigureInForce> figures, LocalDate result)
            implements Why<LocalDate> {
        public UseBy {
            figures = List.copyOf(figures);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.useBy(this);
        }

        @Override
        public LocalDate recomputed() {
            return cold.reaches(potted.high());
        }

        @Override
        public List<String> ruleSources() {
            return List.of("cornell-review", "cornell-tulip-trials");
        }

        @Override
        public Set<Lever> levers() {
            return EnumSet.of(Lever.OWN_FIGURE, Lever.A_DAY, Lever.DRY_COLD);
        }
    }

    /**
     * The last day on which a stage can begin for a wish, by the usual lengths.
     *
     * @param share the bulbs the wish is for
     */
    record NeededForWish(
            Wish wish, Milestone milestone, Prospect.Share share, List<FigureInForce> figures, LocalDate result)
            implements Why<LocalDate> {
        public NeededForWish {
            figures = List.copyOf(figures);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.neededForWish(this);
        }

        @Override
        public LocalDate recomputed() {
            return share.neededFor(wish.to(), milestone).map(Window::likely).orElse(wish.to());
        }

        @Override
        public List<String> ruleSources() {
            return List.of("isu-2024");
        }

        @Override
        public Set<Lever> levers() {
            return EnumSet.of(Lever.WISH, Lever.OWN_FIGURE);
        }
    }

    /** When a stage begins: lengths added up from what has begun, and not before today. */
    record StageBegins(Stage stage, Milestone milestone, Prospect prospect, List<FigureInForce> figures, Window result)
            implements Why<Window> {
        public StageBegins {
            figures = List.copyOf(figures);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.stageBegins(this);
        }

        @Override
        public Window recomputed() {
            return Optional.ofNullable(prospect.windows().get(milestone)).orElseThrow();
        }

        @Override
        public Set<Lever> levers() {
            return EnumSet.of(Lever.A_DAY, Lever.OWN_FIGURE, Lever.A_MOVE, Lever.WISH);
        }
    }

    /** How many days late a job is. */
    record Late(Deadline deadline, LocalDate today, Integer result) implements Why<Integer> {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.late(this);
        }

        @Override
        public Integer recomputed() {
            return Math.max(0, (int) ChronoUnit.DAYS.between(deadline.day(), today));
        }

        @Override
        public Set<Lever> levers() {
            return EnumSet.of(Lever.A_MOVE, Lever.WISH, Lever.OWN_FIGURE);
        }
    }
}
