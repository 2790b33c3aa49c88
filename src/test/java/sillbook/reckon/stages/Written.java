// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import java.util.Arrays;
import java.util.List;

/** What the tables of check values write in words, read. */
final class Written {
    private Written() {}

    static ThreePoints points(String text) {
        List<Double> points = numbers(text);
        return new ThreePoints(points.get(0), points.get(1), points.get(2));
    }

    /** {@code 64/3 2 3 8}; none of nothing. */
    static List<Double> numbers(String text) {
        return Arrays.stream(text.strip().split(" ", -1))
                .filter(word -> !word.isEmpty())
                .map(Written::number)
                .toList();
    }

    private static double number(String word) {
        String[] parts = word.split("/", -1);
        return parts.length == 1
                ? Double.parseDouble(word)
                : Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
    }

    /** The number at the end of what was asked: 0.1 of {@code quantile 0.1}. */
    static double asked(String what) {
        return Double.parseDouble(what.substring(what.lastIndexOf(' ') + 1));
    }

    static double of(Distribution distribution, String what) {
        if (what.startsWith("quantile")) {
            return distribution.quantile(asked(what));
        }
        return choose(
                what,
                "mean",
                distribution.mean(),
                "sd",
                Math.sqrt(distribution.variance()),
                "variance",
                distribution.variance());
    }

    /** The value after the name that was asked for. */
    static double choose(String what, Object... namesAndValues) {
        int at = Arrays.asList(namesAndValues).indexOf(what);
        if (at < 0) {
            throw new IllegalArgumentException("nobody works out " + what);
        }
        return (Double) namesAndValues[at + 1];
    }
}
