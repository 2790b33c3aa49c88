// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;

/** Numbers of things, and things in a row, as they are said. */
public final class Counts {
    private Counts() {}

    /** {@code 1 pot}, {@code 20 pots}. */
    public static String of(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    /** A number in groups of three: {@code 2 544}. */
    public static String grouped(long number) {
        return Long.toString(number).replaceAll("(?<=\\d)(?=(\\d{3})+$)", " ");
    }

    /** {@code a, b and c}. */
    public static String and(List<String> things) {
        return joined(things, " and ");
    }

    /** {@code a, b or c}. */
    public static String or(List<String> things) {
        return joined(things, " or ");
    }

    private static String joined(List<String> things, String last) {
        if (things.size() < 2) {
            return String.join("", things);
        }
        int end = things.size() - 1;
        return String.join(", ", things.subList(0, end)) + last + things.get(end);
    }

    /** {@code 95 %} of a share from 0 to 1; all and nothing are said of nothing else. */
    public static String percent(double share) {
        long rounded = Math.round(share * 100);
        long said = share > 0 && share < 1 ? Math.max(1, Math.min(99, rounded)) : rounded;
        return said + " %";
    }
}
