// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.stream.Stream;

/**
 * Why a figure is what it is, as it is read: always in the same parts.
 *
 * @param title the figure: {@code 16 weeks in, about 15 cold enough}
 * @param rule in a sentence or two
 * @param from the figures that went in and the sources of the rule, each with its mark
 * @param sum line by line
 * @param total what comes out
 * @param wouldChange what would change it, a sentence each
 */
public record Explanation(
        String title, String rule, List<String> from, List<Line> sum, String total, List<String> wouldChange) {
    public Explanation {
        from = List.copyOf(from);
        sum = List.copyOf(sum);
        wouldChange = List.copyOf(wouldChange);
    }

    /** The same, with more that went in. */
    Explanation alsoFrom(List<String> more) {
        return new Explanation(
                title, rule, Stream.concat(from.stream(), more.stream()).toList(), sum, total, wouldChange);
    }

    /**
     * One line of a sum.
     *
     * @param what {@code 21 Sep-18 Oct}
     * @param how {@code cellar, cold all year}
     * @param comes to what, flush right: {@code 27 days}; may be empty
     */
    public record Line(String what, String how, String comes) {}
}
