// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import java.util.Collection;
import java.util.List;
import sillbook.reckon.effects.Proportion;

/**
 * By how much windows are widened, because those before held the day less often than they promise.
 *
 * <p>How far each day lay from the likely one is counted in halves of its window: 1 is the window's end. So many such halves as
 * would have held 8 days of 10 is the {@code reach}: of n days the ⌈0.8 (n + 1)⌉th smallest, as in split conformal prediction (J.
 * Lei, M. G'Sell, A. Rinaldo, R. J. Tibshirani and L. Wasserman, Journal of the American Statistical Association 113, 2018,
 * 1094-1111), which supposes that the next window is no other than those before, and nothing of how the days are distributed.
 *
 * <p>Judgements of ours: nothing is widened for fewer than {@link #LEAST} days, nor unless the promise lies beyond what the
 * share leaves open 19 times in 20; the reach is drawn towards 1 as if {@link #WORTH} more had kept it; and nothing is ever
 * narrowed, for a window too wide costs less than one too narrow.
 *
 * @param held of the windows as they were before any widening
 * @param reach above 0; 1 where nothing is known
 */
public record Widening(Proportion held, double reach) {
    /** What is known before any day came. */
    public static final Widening NONE = new Widening(new Proportion(0, 0), 1);

    static final int LEAST = 10;
    static final int WORTH = 5;

    /** Windows go from one of ten to nine of ten. */
    private static final double PROMISED = 0.8;

    private static final double SURE = 0.95;
    private static final double TENTHS = 10;

    public Widening {
        if (!(reach >= 0 && reach < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no reach: " + reach);
        }
    }

    /** What these days teach, each in halves of its window from the likely day, to either side. */
    public static Widening of(Collection<Double> halves) {
        if (halves.isEmpty()) {
            return NONE;
        }
        List<Double> sorted = halves.stream().sorted().toList();
        int held = (int) sorted.stream().filter(one -> one <= 1).count();
        int at = (int) Math.ceil(PROMISED * (sorted.size() + 1));
        return new Widening(new Proportion(held, sorted.size()), sorted.get(Math.min(at, sorted.size()) - 1));
    }

    /** The factor, to a tenth, so that what is said is what is used; 1 where nothing is widened. */
    public double by() {
        if (held.of() < LEAST || reach <= 1 || mayKeepItsPromise()) {
            return 1;
        }
        double believed = (double) held.of() / (held.of() + WORTH);
        return Math.round(TENTHS * Math.pow(reach, believed)) / TENTHS;
    }

    private boolean mayKeepItsPromise() {
        return held.interval(SURE).filter(range -> range.high() < PROMISED).isEmpty();
    }
}
