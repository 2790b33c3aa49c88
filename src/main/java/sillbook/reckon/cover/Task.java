// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/**
 * A season to be kept in bloom, the pots there are for it, and the room they have.
 *
 * @param sites where pots bloom, at least one; each its own room
 * @param colds where pots stand until they come in; may be none
 */
public record Task(Season season, List<Room> sites, List<Room> colds, List<PotGroup> pots, List<DayWish> wishes) {
    /** As many pots as a search takes on. */
    public static final int MOST_POTS = 500;

    private static final int MOST_PLACES = 20;
    private static final int MOST_WISHES = 100;
    private static final int MOST_WAYS = 200_000;

    public Task {
        sites = List.copyOf(sites);
        colds = List.copyOf(colds);
        pots = List.copyOf(pots);
        wishes = List.copyOf(wishes);
        Limits.within("number of sites", sites.size(), 1, MOST_PLACES);
        Limits.within("number of cold places", colds.size(), 0, MOST_PLACES);
        Limits.within("number of pots", pots.stream().mapToInt(PotGroup::count).sum(), 0, MOST_POTS);
        Limits.within("number of wishes", wishes.size(), 0, MOST_WISHES);
        int coldPlaces = colds.size();
        for (PotGroup group : pots) {
            checkPlaces("site", group.sites(), sites.size());
            group.cold().ifPresent(stay -> checkPlaces("cold place", stay.places(), coldPlaces));
        }
        for (DayWish wish : wishes) {
            Limits.within("day of a wish", wish.day(), season.first(), season.last());
            checkPlaces("pot of a wish", wish.groups(), pots.size());
            checkPlaces("site of a wish", wish.sites(), sites.size());
        }
        Limits.within("number of ways to bring a pot in", ways(sites, pots), 0, MOST_WAYS);
    }

    /** Said as people count, from 1. */
    private static void checkPlaces(String name, List<Integer> numbers, int count) {
        numbers.forEach(number -> Limits.within(name, number + 1, 1, count));
    }

    private static int ways(List<Room> sites, List<PotGroup> pots) {
        long ways = 0;
        for (PotGroup group : pots) {
            int at = group.sites().isEmpty() ? sites.size() : group.sites().size();
            int from =
                    group.cold().map(stay -> Math.max(1, stay.places().size())).orElse(1);
            ways += (long) group.toBloom().size() * at * from;
        }
        return (int) Math.min(Integer.MAX_VALUE, ways);
    }
}
