// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/**
 * Where pots stand until they come in, and since when.
 *
 * @param from the first day on which they may go there; a pot that is brought in on that day or before takes no room there
 * @param atMost days there: a pot goes there so many days before it comes in, but not before the first day
 * @param places any one of these cold places of the {@link Task}, by their number from 0
 */
public record ColdStay(int from, int atMost, List<Integer> places) {
    private static final int LONGEST = 1_000;

    public ColdStay {
        Limits.day("first day in the cold", from);
        Limits.within("number of days in the cold", atMost, 0, LONGEST);
        if (places.isEmpty()) {
            throw new Unreckonable("no cold place is named");
        }
        places = places.stream().distinct().sorted().toList();
    }

    /** Pots that all go there on one day, and stay until they come in. */
    public ColdStay(int from, List<Integer> places) {
        this(from, LONGEST, places);
    }

    /** The day on which a pot goes there that comes in on a day. */
    int since(int pull) {
        return Math.max(from, pull - atMost);
    }
}
