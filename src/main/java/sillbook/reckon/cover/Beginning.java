// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

/**
 * The beginning of a plan, up to the first day that still asks for something.
 *
 * @param nextWish the first that is neither met nor given up
 * @param coveredTo the last day up to which all days are in bloom or given up
 * @param lastGap the last day given up
 * @param rise of the bound by what was taken and given up
 */
record Beginning(Taken taken, int nextWish, int coveredTo, int lastGap, Count count, double rise) {

    /** Nothing yet. */
    static Beginning of(Ways ways) {
        int before = ways.season().first() - 1;
        return new Beginning(Taken.nothing(ways), 0, before, before, Count.NOTHING, 0);
    }

    /** Whether a way may be taken: not one that blooms on a day given up, as taking it then would have been better. */
    boolean admits(Way way, Ways ways) {
        return way.first() > lastGap && taken.admits(way, ways);
    }

    /** With a way, and covered up to a day. */
    Beginning with(Way way, Ways ways, int covered, double riseAfter) {
        Taken now = taken.with(way, ways);
        return new Beginning(now, unmetFrom(nextWish, now, ways), covered, lastGap, count.with(way), riseAfter);
    }

    /** With the next day given up, and covered up to a day. */
    Beginning withGap(int covered, double riseAfter) {
        return new Beginning(taken, nextWish, covered, coveredTo + 1, count.withGap(), riseAfter);
    }

    /** With what the next wish lacks given up. */
    Beginning withLack(Ways ways, double riseAfter) {
        int next = unmetFrom(nextWish + 1, taken, ways);
        return new Beginning(taken, next, coveredTo, lastGap, count.withLack(lacking(ways)), riseAfter);
    }

    Beginning coveredUpTo(int day) {
        return new Beginning(taken, nextWish, day, lastGap, count, rise);
    }

    /** Whether a wish is open on a day. */
    boolean wishesOn(int day, Ways ways) {
        return nextWish < ways.wishes().size() && ways.wishes().get(nextWish).day() == day;
    }

    /** How many pots the next wish lacks. */
    int lacking(Ways ways) {
        return ways.wishes().get(nextWish).count() - taken.met(nextWish);
    }

    private static int unmetFrom(int wish, Taken taken, Ways ways) {
        int next = wish;
        while (next < ways.wishes().size()
                && taken.met(next) >= ways.wishes().get(next).count()) {
            next++;
        }
        return next;
    }
}
