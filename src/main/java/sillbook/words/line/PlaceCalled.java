// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.stream.Collectors;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.words.Heard;

/** A place by what is typed of its name, found as in a line. */
public final class PlaceCalled {
    private PlaceCalled() {}

    /** The one place that has this name, or a name that begins so. */
    public static Heard<Place> find(Journal journal, String typed) {
        List<Place> places = List.copyOf(journal.places().all());
        List<Place> found = new Names<>(places, Place::name).find(typed);
        if (found.size() == 1) {
            return Heard.as(found.get(0));
        }
        return found.isEmpty()
                ? Heard.not("no such place", "There is no place '" + typed + "'." + thereAre(places))
                : Heard.not(
                        "which place?",
                        "'" + typed + "' may be " + names(found, "' or '") + ". Write more of the name.");
    }

    private static String thereAre(List<Place> places) {
        return places.isEmpty()
                ? " Write one down first: sillbook write 'place cellar, cellar'."
                : " There are " + names(places, "', '") + ".";
    }

    private static String names(List<Place> places, String between) {
        return places.stream().map(Place::name).collect(Collectors.joining(between, "'", "'"));
    }
}
