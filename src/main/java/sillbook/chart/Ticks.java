// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.util.List;
import java.util.stream.LongStream;

/** Round numbers for axes: steps of 1, 2 or 5 times a power of ten (P. S. Heckbert, "Nice Numbers for Graph Labels", 1990). */
public final class Ticks {
    private Ticks() {}

    /** The smallest round step that is not under the given one; 1 where that is not positive. */
    public static double roundStep(double atLeast) {
        if (!(atLeast > 0) || Double.isInfinite(atLeast)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
        double times = atLeast / power;
        double slack = 1e-9;
        if (times <= 1 + slack) {
            return power;
        }
        if (times <= 2 + slack) {
            return 2 * power;
        }
        return times <= 5 + slack ? 5 * power : 10 * power;
    }

    public static double nextRoundStep(double step) {
        return roundStep(step * 1.5);
    }

    /** Round values from at or under the low to at or over the high one, a step apart that makes about so many of them, at most. */
    public static List<Double> covering(double low, double high, int most) {
        double step = roundStep((high - low) / Math.max(1, most - 1));
        while (count(low, high, step) > Math.max(2, most)) {
            step = nextRoundStep(step);
        }
        double finalStep = step;
        long first = (long) Math.floor(low / step);
        return LongStream.range(first, first + count(low, high, step))
                .mapToObj(n -> n * finalStep)
                .toList();
    }

    private static long count(double low, double high, double step) {
        return (long) Math.ceil(high / step) - (long) Math.floor(low / step) + 1;
    }
}
