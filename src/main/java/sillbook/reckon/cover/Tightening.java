// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/** Looks for prices with a high bound, by going along the slope (subgradient steps of Polyak's length). */
final class Tightening {
    private static final int STEPS = 400;
    private static final int PATIENCE = 12;
    private static final double SHORTEST = 1e-3;
    private static final double EARLIER = 0.4;

    private final Ways ways;
    private final Stage stage;
    private final Allowance allowance;

    Tightening(Ways ways, Stage stage, Allowance allowance) {
        this.ways = ways;
        this.stage = stage;
        this.allowance = allowance;
    }

    /** From a relaxation to the best found; ends early where its bound reaches the target or its allowance is spent. */
    Relaxation towards(int target, Relaxation start) {
        Relaxation best = start;
        Relaxation here = start;
        Prices direction = start.slope();
        double pace = 1;
        int sinceBetter = 0;
        for (int step = 0; step < STEPS && !isDone(best, target) && pace > SHORTEST; step++) {
            double length = direction.squareLength();
            if (length == 0) {
                return best;
            }
            double far = pace * Math.max(target - here.bound(), SHORTEST) / length;
            here = new Relaxation(ways, stage, here.prices().plus(direction, far, dearestWish()), Fixed.none(ways));
            allowance.spend(here.effort());
            direction = here.slope().blendedWith(direction, EARLIER);
            if (here.bound() > best.bound()) {
                best = here;
                sinceBetter = 0;
            } else if (++sinceBetter == PATIENCE) {
                pace /= 2;
                sinceBetter = 0;
                here = best;
                direction = best.slope();
            }
        }
        return best;
    }

    private boolean isDone(Relaxation best, int target) {
        return Rounding.up(best.bound()) >= target || allowance.isSpent();
    }

    /** Where lacking pots are what it costs, no pot is worth more than one of them. */
    private double dearestWish() {
        return stage.costOfLack() > 0 ? stage.costOfLack() : Double.MAX_VALUE;
    }
}
