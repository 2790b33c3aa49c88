// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Comparator;
import java.util.List;

/**
 * What may come after a beginning; it is only carried out when its turn comes.
 *
 * @param move a way's number, or one of the two below
 * @param coveredTo the last day up to which all are in bloom or given up by then
 * @param rise of the bound by then
 * @param bound of every plan that begins so
 * @param order in which it was thought of, so that equals keep their order
 */
record Step(Beginning from, int move, int coveredTo, double rise, double bound, Count count, long order) {
    static final int GAP = -1;
    static final int LACK = -2;

    /** The most promising first. */
    static final Comparator<Step> PROMISE = Comparator.comparingDouble(Step::bound)
            .thenComparingInt(step -> step.count.unmet())
            .thenComparingInt(step -> step.count.gaps())
            .thenComparingInt(step -> step.count.used())
            .thenComparingInt(step -> step.count.length())
            .thenComparingLong(Step::order);

    Beginning carryOut(Ways ways) {
        return switch (move) {
            case GAP -> from.withGap(coveredTo, rise);
            case LACK -> from.withLack(ways, rise);
            default -> from.with(ways.get(move), ways, coveredTo, rise);
        };
    }

    /** All ways taken by then. */
    List<Way> ways(Ways all) {
        List<Way> ways = from.taken().ways();
        if (move >= 0) {
            ways.add(all.get(move));
        }
        return ways;
    }
}
