// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Pots that are alike, each of which comes in on one day from earliest to latest or not at all. It stands at a site from that day to its last in bloom.
 *
 * @param toBloom days from coming in to the first in bloom, one for each day from earliest to latest
 * @param lasts days in bloom, the first and the last among them
 * @param takes of the room of the place where it stands
 * @param count of pots
 * @param sites where it may bloom, by their number from 0; all where none is named
 * @param cold empty where the cold has room for it anyway
 */
public record PotGroup(
        int earliest,
        int latest,
        List<Integer> toBloom,
        int lasts,
        int takes,
        int count,
        List<Integer> sites,
        Optional<ColdStay> cold) {
    private static final int LONGEST = 400;
    private static final int LONGEST_COLD = 1_000;
    private static final int LARGEST = 1_000;

    public PotGroup {
        Limits.day("earliest day", earliest);
        Limits.day("latest day", latest);
        if (latest < earliest) {
            throw new Unreckonable("the latest day " + latest + " is before the earliest, " + earliest);
        }
        if ((long) latest - earliest >= LONGEST) {
            throw new Unreckonable("more than " + LONGEST + " days lie from the earliest to the latest");
        }
        if (toBloom.size() != latest - earliest + 1) {
            throw new Unreckonable("there are " + toBloom.size() + " numbers of days to bloom for "
                    + (latest - earliest + 1) + " days to come in on; one is wanted, or one for each");
        }
        toBloom.forEach(days -> Limits.within("number of days to bloom", days, 0, LONGEST));
        Limits.within("number of days in bloom", lasts, 1, LONGEST);
        Limits.within("room a pot takes", takes, 1, LARGEST);
        Limits.within("number of pots", count, 1, Task.MOST_POTS);
        cold.ifPresent(stay -> Limits.within("first day in the cold", stay.from(), earliest - LONGEST_COLD, latest));
        toBloom = List.copyOf(toBloom);
        sites = sites.stream().distinct().sorted().toList();
    }

    /** One pot that may bloom at any site, always finds room in the cold, and takes as long whenever it comes in. */
    public static PotGroup of(int earliest, int latest, int toBloom, int lasts, int takes) {
        return new PotGroup(
                earliest, latest, steady(earliest, latest, toBloom), lasts, takes, 1, List.of(), Optional.empty());
    }

    /** The same number of days to bloom for each day from earliest to latest; none where latest is before earliest. */
    public static List<Integer> steady(int earliest, int latest, int toBloom) {
        long days = Math.max(0, Math.min(LONGEST + 1L, latest - (long) earliest + 1));
        return Collections.nCopies((int) days, toBloom);
    }

    PotGroup withCount(int pots) {
        return new PotGroup(earliest, latest, toBloom, lasts, takes, pots, sites, cold);
    }

    /** The first day in bloom of a pot that comes in on a day; before the earliest it takes as long as on that, after the latest as on that. */
    public int firstBloom(int pull) {
        return pull + toBloom.get(Math.max(earliest, Math.min(latest, pull)) - earliest);
    }

    /** The last day in bloom of a pot that comes in on a day. */
    public int lastBloom(int pull) {
        return firstBloom(pull) + lasts - 1;
    }
}
