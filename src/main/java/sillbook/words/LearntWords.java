// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.handbook.FigureName;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.reckon.effects.Proportion;
import sillbook.reckon.stages.NormalInverseGamma;
import sillbook.reckon.stages.StudentT;
import sillbook.reckon.stages.Widening;
import sillbook.season.LearntLength;
import sillbook.season.LengthGiven;
import sillbook.season.OwnLength;
import sillbook.season.PlantSpan;
import sillbook.season.SignAhead;
import sillbook.season.WhyLearnt;
import sillbook.text.Columns;
import sillbook.words.Explanation.Line;

/** How long a stage lasts, where that was learnt, in words. */
public final class LearntWords {
    private static final String RULE = "What was published counts as two of your pots, and yours move it. Eight times "
            + "in ten it lies between the outer values.";

    private static final String HANDBOOKS =
            "You asked for the handbook's figure, so that it holds whatever your pots taught. They would say:";

    private static final String WIDENED =
            " Widened by what would have held 8 windows in 10 of the last three winters (split conformal prediction; Lei and "
                    + "others 2018), less while they are few (a judgement of ours).";

    /** Of a day that rests on what was learnt. */
    static final String CHANCE = "What your pots taught is a chance: one time in ten sooner, one time in ten later.";

    private static final double OF_TEN_CASES_EIGHT = 0.8;
    private static final int MOST_NAMED = 5;

    /** As many as a page has room for, of own lengths and of what else the sum has. */
    private static final int MOST_LINES = 6;

    private static final int OWN_COLUMNS = 44;

    static String title(WhyLearnt why) {
        String figure = span(why.length().span());
        String pots = "your " + Counts.of(why.length().pots(), "pot");
        return figure + (why.setAside().isPresent() ? ", not those of " : ", by ") + pots;
    }

    /** {@code weeks to bloom}; of a sign {@code days to buds}. */
    static String span(PlantSpan span) {
        return span.figure().map(Terms.FIGURES::say).orElseGet(() -> "days to " + sign(span));
    }

    /** {@code buds}: what the span ends with. */
    public static String sign(PlantSpan span) {
        return switch (span) {
            case TO_BUDS -> "buds";
            case TO_COLOUR -> "colour";
            case TO_FIRST_FLOWER -> "first flower";
            case TO_FULL_BLOOM -> "full bloom";
            case IN_BLOOM -> "past bloom";
        };
    }

    /** {@code buds about Fri 15 Jan (12 to 19 Jan), by your 5 pots}: each sign to come; empty where none is foretold. */
    public static List<String> ahead(List<SignAhead> signs) {
        return signs.stream().map(LearntWords::ahead).toList();
    }

    private static String ahead(SignAhead sign) {
        return sign(sign.sign()) + " about " + Days.day(sign.window().likely()) + " ("
                + Days.fromTo(sign.window().earliest(), sign.window().latest()) + "), by your "
                + Counts.of(sign.length().length().pots(), "pot");
    }

    /** A value of it, in the unit of its figure; of a sign, which has none, in days. */
    static String value(WhyLearnt why, Settings settings) {
        return why.length()
                .span()
                .figure()
                .map(name -> FigureValues.say(name, why.result(), settings))
                .orElseGet(() -> FigureValues.say(FigureName.IN_BLOOM, why.result(), settings));
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

    /** What was published, the own lengths by winter, what this pot has that they had not, and what comes of it. */
    List<Line> sum(LengthGiven given, PotNames names) {
        LearntLength length = given.length();
        List<Line> parts = new ConditionWords(names.journal().settings()).lines(given);
        List<Line> left = new ArrayList<>(shortOfCold(length, names));
        widened(length.widening()).ifPresent(left::add);
        List<Line> sum = new ArrayList<>();
        NormalInverseGamma before = length.before();
        String origin = length.span().figure().isPresent() ? "published" : "taken";
        sum.add(new Line(origin, doubt(before.next()), tenths(before.centre()) + " days"));
        sum.addAll(own(length, names, Math.max(1, MOST_LINES - parts.size() - 2 * left.size())));
        sum.addAll(left);
        sum.addAll(parts);
        StudentT next = given.next();
        sum.add(new Line("next", doubt(next), tenths(next.centre()) + " days"));
        return sum;
    }

    private static String doubt(StudentT length) {
        return "give or take " + tenths(length.scale()) + " days";
    }

    private static List<Line> own(LearntLength length, PotNames names, int most) {
        List<OwnLength> outliers = length.outliers();
        Map<Season, List<String>> winters = new LinkedHashMap<>();
        length.own()
                .forEach(one -> winters.computeIfAbsent(
                                names.journal().seasonOf(one.from()), winter -> new ArrayList<>())
                        .add(names.labels(one.pots()) + " " + tenths(one.days())
                                + (outliers.contains(one) ? " (far from the others)" : "")));
        List<Line> lines = new ArrayList<>();
        winters.forEach((winter, each) -> {
            String season = names.journal().nameOf(winter);
            for (String part : Columns.wrap(String.join(", ", each), OWN_COLUMNS)) {
                lines.add(new Line(lines.stream().map(Line::what).anyMatch(season::equals) ? "" : season, part, ""));
            }
        });
        int hidden = Math.max(0, lines.size() - most);
        if (hidden == 0) {
            return lines;
        }
        Line first = lines.get(hidden);
        List<Line> last = new ArrayList<>(lines.subList(hidden, lines.size()));
        last.set(0, new Line(first.what(), first.how(), "and before"));
        return last;
    }

    private static List<Line> shortOfCold(LearntLength length, PotNames names) {
        List<Id<Pot>> pots = length.shortOfCold().stream()
                .flatMap(one -> one.pots().stream())
                .distinct()
                .toList();
        return pots.isEmpty() ? List.of() : List.of(new Line("left out", names.labels(pots) + ", short of cold", ""));
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
