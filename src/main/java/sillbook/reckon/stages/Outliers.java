// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Own lengths that stand too far from all the others, and from what was believed before: a slip of the pen, or a pot that
 * had another fate. They are named; they count all the same, and widen what comes of them, until the journal is
 * corrected.
 *
 * <p>Each is held against what the others foretell, at a level that is divided by their number, so that many lengths do
 * not name some by chance alone (Cook and Weisberg, <i>Residuals and Influence in Regression</i>, 1982, 2.2.2).
 */
public final class Outliers {
    private static final double LEVEL = 0.05;

    /** So that one length or two are not named too lightly; a judgement of ours. */
    private static final int FEWEST_DIVIDED_BY = 5;

    private Outliers() {}

    /** Where among the lengths, in days, those are that stand out. */
    public static List<Integer> among(List<Double> days, NormalInverseGamma before) {
        Sample all = Sample.of(days);
        return among(
                days.size(), i -> before.after(all.without(days.get(i))).next().tails(days.get(i)));
    }

    /** The same of lengths that were under conditions: held against what the others foretell for its own. */
    public static List<Integer> among(List<Regression.Case> own, Regression before) {
        Regression all = before.after(own);
        return among(own.size(), i -> all.without(own.get(i)).tails(own.get(i).days()));
    }

    private static List<Integer> among(int howMany, IntToDoubleFunction tails) {
        double tooRare = LEVEL / Math.max(howMany, FEWEST_DIVIDED_BY);
        return IntStream.range(0, howMany)
                .filter(i -> tails.applyAsDouble(i) < tooRare)
                .boxed()
                .toList();
    }
}
