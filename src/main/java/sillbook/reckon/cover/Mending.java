// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Betters a plan in parts: keeps it but for a stretch of the season, and sweeps that anew (large neighbourhood search: P. Shaw, Using constraint programming and local search methods to solve vehicle routing problems, CP-98). It
 * proves nothing. Stretches are drawn from a fixed seed.
 */
final class Mending {
    private static final int WIDTH = 100;
    private static final int PATIENCE = 40;
    private static final int SHORTEST = 10;
    private static final int LONGEST = 60;

    private final Ways ways;
    private final Best best;
    private final SplittableRandom random = new SplittableRandom(1);

    Mending(Ways ways, Best best) {
        this.ways = ways;
        this.best = best;
    }

    /** Goes on until no stretch has bettered the plan for a while, the stage's bound is reached, or the allowance is spent. */
    void mend(Relaxation relaxation, Worth worth, Allowance allowance) {
        Stage stage = relaxation.stage();
        int sinceBetter = 0;
        while (sinceBetter < PATIENCE && !allowance.isSpent() && best.isOpen(stage)) {
            Tally before = best.tally();
            Season season = ways.season();
            int length = SHORTEST + random.nextInt(LONGEST);
            int from = season.first() - length / 2 + random.nextInt(season.days());
            sweepAnew(from, from + length, relaxation, worth, allowance);
            sinceBetter = best.tally().equals(before) ? sinceBetter + 1 : 0;
        }
    }

    /** Keeps the pots that do not bloom from a day to a day. */
    void sweepAnew(int from, int to, Relaxation relaxation, Worth worth, Allowance allowance) {
        List<Way> kept = best.chosen().stream()
                .filter(way -> way.last() < from || way.first() > to)
                .toList();
        Fixed fixed = Fixed.of(ways, kept);
        Relaxation around = new Relaxation(ways, relaxation.stage(), relaxation.prices(), fixed);
        allowance.spend(around.effort());
        new Sweep(ways, around, worth, best, allowance, fixed, WIDTH).run();
    }
}
