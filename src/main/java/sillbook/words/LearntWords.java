// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.reckon.stages.StudentT;

/** How long a stage lasts, where that was learnt, in words. */
public final class LearntWords {
    private static final double OF_TEN_CASES_EIGHT = 0.8;
    private static final int MOST_NAMED = 5;

    /** A fact a line, to a tenth of a day. */
    public List<String> lines(StudentT next) {
        StudentT.Interval interval = next.interval(OF_TEN_CASES_EIGHT);
        return List.of(
                "centre: " + tenths(next.centre()) + " days",
                "scale: " + tenths(next.scale()) + " days",
                "degrees of freedom: " + tenths(next.degreesOfFreedom()),
                "eight times of ten: " + tenths(interval.low()) + " to " + tenths(interval.high()) + " days");
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
