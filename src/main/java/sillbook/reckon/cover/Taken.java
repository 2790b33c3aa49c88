// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Ways that are taken, and what they leave: pots of each kind, room in each cell, what each wish has. */
final class Taken {
    private final @Nullable Trail trail;
    private final short[] pots;
    private final int[] load;
    private final int[] met;

    private Taken(@Nullable Trail trail, short[] pots, int[] load, int[] met) {
        this.trail = trail;
        this.pots = pots;
        this.load = load;
        this.met = met;
    }

    static Taken nothing(Ways ways) {
        return new Taken(
                null,
                new short[ways.kinds().size()],
                new int[ways.cells().count()],
                new int[ways.wishes().size()]);
    }

    /** Whether there is a pot of its kind left, and room for it. */
    boolean admits(Way way, Ways ways) {
        return pots[way.kind()] < ways.kinds().get(way.kind()).count() && way.fits(load, ways.cells());
    }

    Taken with(Way way, Ways ways) {
        short[] potsNow = pots.clone();
        potsNow[way.kind()]++;
        int[] loadNow = load.clone();
        way.stand(loadNow);
        int[] metNow = met.clone();
        for (int wish = 0; wish < metNow.length; wish++) {
            metNow[wish] += ways.serves(way, wish) ? 1 : 0;
        }
        return new Taken(new Trail(way, trail), potsNow, loadNow, metNow);
    }

    /** All ways, the last first. */
    List<Way> ways() {
        return Trail.ways(trail);
    }

    /** How many pots of a kind are taken. */
    int pots(int kind) {
        return pots[kind];
    }

    int load(int cell) {
        return load[cell];
    }

    /** How many pots a wish has. */
    int met(int wish) {
        return met[wish];
    }
}
