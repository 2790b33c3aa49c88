// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.reckon.effects.Proportion;
import sillbook.reckon.stages.NormalInverseGamma;
import sillbook.reckon.stages.StudentT;
import sillbook.reckon.stages.Widening;
import sillbook.season.LearntLength;
import sillbook.season.OwnLength;
import sillbook.season.WhyLearnt;
import sillbook.words.Explanation.Line;

/** How long a stage lasts, where that was learnt, in words. */
public final class LearntWords {
    private static final String RULE =
            "What was published is worth two pots of your own, and each of your own moves it. One time in ten "
                    + "it takes less than the first value, one time in ten more than the last.";

    private static final String HANDBOOKS =
            "You asked for the handbook's figure, so that it holds whatever your pots taught. They would say:";

    private static final String WIDENED =
            " Widened by what would have held 8 windows in 10 of the last three winters (split conformal prediction; Lei and "
                    + "others 2018), less while they are few (a judgement of ours).";

    /** Of a day that rests on what was learnt. */
    static final String CHANCE = "What your pots taught is a chance: one time in ten sooner, one time in ten later.";

    private static final double OF_TEN_CASES_EIGHT = 0.8;
    private static final int MOST_NAMED = 5;

    /** As many as a page has room for. */
    private static final int MOST_LINES = 8;

    static String title(WhyLearnt why) {
        String figure = Terms.FIGURES.say(why.length().figure());
        String pots = "your " + Counts.of(why.length().pots(), "pot");
        return figure + (why.setAside().isPresent() ? ", not those of " : ", by ") + pots;
    }

    static String rule(WhyLearnt why) {
        boolean isWidened = why.length().widening().by() > 1;
        return (why.setAside().isPresent() ? HANDBOOKS : RULE) + (isWidened ? WIDENED : "");
    }

    /** A fact a line, to a tenth of a day. */
    public List<String> lines(StudentT next) {
        StudentT.Interval interval = next.interval(OF_TEN_CASES_EIGHT);
        return List.of(
                "centre: " + tenths(next.centre()) + " days",
                "scale: " + tenths(next.scale()) + " days",
                "degrees of freedom: " + tenths(next.degreesOfFreedom()),
                "eight times of ten: " + tenths(interval.low()) + " to " + tenths(interval.high()) + " days");
    }

    /** What was published, the own lengths by season, and what stands out. */
    List<Line> sum(LearntLength length, PotNames names) {
        List<Line> sum = new ArrayList<>();
        NormalInverseGamma before = length.before();
        sum.add(new Line(
                "published",
                "give or take " + tenths(before.next().scale()) + " days",
                tenths(before.centre()) + " days"));
        List<OwnLength> outliers = length.outliers();
        List<OwnLength> own = length.own();
        int hidden = Math.max(0, own.size() - MOST_LINES);
        if (hidden > 0) {
            sum.add(new Line("before", "earlier ones, counted too", Counts.of(hidden, "length")));
        }
        own.stream()
                .skip(hidden)
                .forEach(one -> sum.add(new Line(
                        Days.date(one.from()) + " " + one.from().getYear(),
                        names.labels(one.pots()) + (outliers.contains(one) ? ", far from the others" : ""),
                        tenths(one.days()) + " days")));
        widened(length.widening()).ifPresent(sum::add);
        StudentT next = length.next();
        sum.add(new Line("next", "give or take " + tenths(next.scale()) + " days", tenths(next.centre()) + " days"));
        return sum;
    }

    /** {@code widened by 1.3: the last 22 windows held 13 times}; empty where nothing is. */
    private static Optional<Line> widened(Widening widening) {
        Proportion held = widening.held();
        return Optional.of(widening.by())
                .filter(by -> by > 1)
                .map(by -> new Line(
                        "widened",
                        "the last " + Counts.of(held.of(), "window") + " held the day "
                                + (held.hits() == 1 ? "once" : held.hits() + " times"),
                        "x " + tenths(by)));
    }

    /** Of lengths that stand out, each once; empty where none does. */
    public Optional<Warned> outliers(List<Double> days) {
        List<String> each = days.stream().map(LearntWords::tenths).distinct().toList();
        if (each.isEmpty()) {
            return Optional.empty();
        }
        String named = each.stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        int more = each.size() - MOST_NAMED;
        return Optional.of(new Warned(
                "outlier",
                "Far from all the others: " + named + (more > 0 ? " and " + more + " more" : "")
                        + " days. Counted all the same; look whether it is right."));
    }

    private static String tenths(double value) {
        return Decimal.say(value, 1);
    }
}
