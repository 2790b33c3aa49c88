// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import org.jspecify.annotations.Nullable;

/**
 * The beginning of a plan, up to the first day that still asks for something.
 *
 * @param trail the ways taken
 * @param taken pots of each kind
 * @param load of each cell
 * @param met pots for each wish
 * @param nextWish the first that is neither met nor given up
 * @param coveredTo the last day up to which all days are in bloom or given up
 * @param lastGap the last day given up
 * @param rise of the bound by what was taken and given up
 */
record Beginning(
        @Nullable Trail trail,
        short[] taken,
        int[] load,
        int[] met,
        int nextWish,
        int coveredTo,
        int lastGap,
        Count count,
        double rise) {

    /** Nothing yet. */
    static Beginning of(Ways ways) {
        int before = ways.season().first() - 1;
        int wishes = ways.wishes().size();
        return new Beginning(
                null,
                new short[ways.kinds().size()],
                new int[ways.cells().count()],
                new int[wishes],
                0,
                before,
                before,
                Count.NOTHING,
                0);
    }

    /** Whether a way may be taken: not one that blooms on a day given up, as taking it then would have been better. */
    boolean admits(Way way, Ways ways) {
        return way.first() > lastGap
                && taken[way.kind()] < ways.kinds().get(way.kind()).count()
                && way.fits(load, ways.cells());
    }

    /** With a way, and covered up to a day. */
    Beginning with(Way way, Ways ways, int covered, double riseAfter) {
        short[] takenNow = taken.clone();
        takenNow[way.kind()]++;
        int[] loadNow = load.clone();
        way.stand(loadNow);
        int[] metNow = met.clone();
        for (int wish = nextWish; wish < metNow.length; wish++) {
            metNow[wish] += ways.serves(way, wish) ? 1 : 0;
        }
        return new Beginning(
                new Trail(way, trail),
                takenNow,
                loadNow,
                metNow,
                unmetFrom(nextWish, metNow, ways),
                covered,
                lastGap,
                count.with(way),
                riseAfter);
    }

    /** With the next day given up, and covered up to a day. */
    Beginning withGap(int covered, double riseAfter) {
        return new Beginning(
                trail, taken, load, met, nextWish, covered, coveredTo + 1, count.withGap(), riseAfter);
    }

    Beginning withLack(Ways ways, double riseAfter) {
        int next = unmetFrom(nextWish + 1, met, ways);
        return new Beginning(
                trail, taken, load, met, next, coveredTo, lastGap, count.withLack(lacking(ways)), riseAfter);
    }

    Beginning coveredUpTo(int day) {
        return new Beginning(trail, taken, load, met, nextWish, day, lastGap, count, rise);
    }

    /** Whether a wish is open on a day. */
    boolean wishesOn(int day, Ways ways) {
        return nextWish < met.length && ways.wishes().get(nextWish).day() == day;
    }

    /** How many pots the next wish lacks. */
    int lacking(Ways ways) {
        return ways.wishes().get(nextWish).count() - met[nextWish];
    }

    private static int unmetFrom(int wish, int[] met, Ways ways) {
        int next = wish;
        while (next < met.length && met[next] >= ways.wishes().get(next).count()) {
            next++;
        }
        return next;
    }
}
