// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/**
 * Goes through the season day by day with the most promising beginnings of plans, at most so many a day. Each is taken on by every pot that could bloom on the first day that still asks for something, and by giving that day up.
 * What its bound or a better beginning rules out is dropped; what is dropped for want of width alone is remembered by its bound, so that a sweep that dropped nothing so has proven its best to be the best.
 */
final class Sweep {
    /** What else takes time, in ways weighed: to sort a step in; to carry it out, and so many numbers copied for it. */
    private static final int SORTED = 5;

    private static final int STEP = 10;
    private static final int COPIED = 4;

    private final Ways ways;
    private final Stage stage;
    private final Relaxation relaxation;
    private final Worth worth;
    private final Best best;
    private final Allowance allowance;
    private final int width;
    private final int costOfStep;
    private final Fixed fixed;
    private final Agenda agenda;
    private double dropped = Double.POSITIVE_INFINITY;
    private int target;
    private long thoughts;

    /** With at most so many beginnings a day; the relaxation has the same ways fixed. */
    Sweep(Ways ways, Relaxation relaxation, Worth worth, Best best, Allowance allowance, Fixed fixed, int width) {
        this.ways = ways;
        this.stage = relaxation.stage();
        this.relaxation = relaxation;
        this.worth = worth;
        this.best = best;
        this.allowance = allowance;
        this.width = width;
        this.fixed = fixed;
        this.agenda = new Agenda(ways, stage, fixed, width);
        this.costOfStep = STEP + (ways.kinds().size() + ways.cells().count()) / COPIED;
        this.target = stage.cost(best.tally());
    }

    /** Offers what it finds to the best, and gives a cost that no plan goes below; 0 where it was ended early. */
    int run() {
        begin();
        for (int day = ways.season().first(); day <= ways.season().last(); day++) {
            List<Step> steps = agenda.take(day);
            while (!steps.isEmpty()) {
                goOn(day, steps);
                steps = agenda.take(day);
            }
        }
        return allowance.isSpent() ? 0 : Math.min(target, Rounding.up(Math.min(dropped, agenda.dropped())));
    }

    private void begin() {
        Beginning beginning = Beginning.of(ways);
        for (Way way : fixed.taken()) {
            double rise = beginning.rise() + relaxation.rise(way.number());
            beginning = beginning.with(way, ways, beginning.coveredTo(), rise);
        }
        int before = ways.season().first() - 1;
        beginning = beginning.coveredUpTo(fixed.coveredFrom(before));
        int day = agenda.firstDay(beginning);
        if (day <= ways.season().last()) {
            takeOn(day, beginning);
        }
    }

    private void goOn(int day, List<Step> steps) {
        Worth.Sieve sieve = worth.sieve(day);
        int kept = 0;
        for (Step step : steps) {
            if (kept == width || allowance.isSpent()) {
                dropped = Math.min(dropped, step.bound());
                return;
            }
            if (Rounding.up(step.bound()) < target) {
                allowance.spend(costOfStep);
                Beginning beginning = step.carryOut(ways);
                if (sieve.passes(beginning)) {
                    kept++;
                    takeOn(day, beginning);
                }
            }
        }
    }

    private void takeOn(int day, Beginning from) {
        if (from.wishesOn(day, ways)) {
            for (int number : ways.forWish(from.nextWish())) {
                think(from, number, relaxation.rise(number), from.count().with(ways.get(number)));
            }
            int lacking = from.lacking(ways);
            think(
                    from,
                    Step.LACK,
                    relaxation.riseOfLack(from.nextWish(), lacking),
                    from.count().withLack(lacking));
        } else {
            for (int number : ways.onDay(day)) {
                think(from, number, relaxation.rise(number), from.count().with(ways.get(number)));
            }
            think(from, Step.GAP, stage.costOfGap(), from.count().withGap());
        }
    }

    private void think(Beginning from, int move, double rises, Count count) {
        allowance.spend(1);
        int coveredTo = agenda.coveredTo(from, move);
        int left = coveredTo + 1 - ways.season().first();
        double rise = from.rise() + rises;
        double bound = relaxation.constant()
                + rise
                + relaxation.rest(left, stage.mostGaps() - count.gaps(), stage.mostUsed() - count.used());
        boolean isPromising = count.isWithin(stage) && Rounding.up(bound) < target;
        if (isPromising && (move < 0 || from.admits(ways.get(move), ways))) {
            put(
                    agenda.dayAfter(from, move, coveredTo),
                    new Step(from, move, coveredTo, rise, bound, count, thoughts++));
        }
    }

    private void put(int day, Step step) {
        allowance.spend(SORTED);
        if (day <= ways.season().last()) {
            agenda.put(day, step);
        } else {
            best.offer(step.ways(ways));
            target = Math.min(target, stage.isLimitOf(best.tally()) ? stage.cost(best.tally()) : target);
        }
    }
}
