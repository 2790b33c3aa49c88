// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/**
 * Where pots stand until they come in, and since when.
 *
 * @param from the day on which they go there; a pot that is brought in on that day or before takes no room there
 * @param places any one of these cold places of the {@link Task}, by their number from 0
 */
public record ColdStay(int from, List<Integer> places) {
    public ColdStay {
        Limits.day("first day in the cold", from);
        if (places.isEmpty()) {
            throw new Unreckonable("no cold place is named");
        }
        places = places.stream().distinct().sorted().toList();
    }
}
