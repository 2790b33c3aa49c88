// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.model.Ids;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.words.Heard;
import sillbook.words.PlaceTerms;

/** Reads places named in a row: {@code garage fridge, cellar, stair window (cool room)}. */
final class NamedPlaces {
    private static final Pattern IN_BRACKETS = Pattern.compile("(.+?)\\s*\\((.+)\\)");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private NamedPlaces() {}

    /** None where nothing is named; what sort a place is must be in its name, or in brackets after it. */
    static Heard<List<Place>> parse(String text, Ids ids) {
        Heard<List<Place>> all = Heard.as(List.of());
        for (String named : text.split(",", -1)) {
            String said = named.strip();
            all = said.isEmpty() ? all : all.then(before -> place(said, ids).map(place -> with(before, place)));
        }
        return all;
    }

    private static List<Place> with(List<Place> before, Place place) {
        List<Place> more = new ArrayList<>(before);
        more.add(place);
        return more;
    }

    private static Heard<Place> place(String said, Ids ids) {
        Matcher bracketed = IN_BRACKETS.matcher(said);
        if (bracketed.matches()) {
            return PlaceTerms.SORTS
                    .parse(bracketed.group(2))
                    .map(sort -> Place.of(ids.next(), bracketed.group(1), sort));
        }
        return sort(said)
                .map(sort -> Heard.as(Place.of(ids.next(), said, sort)))
                .orElseGet(() -> Heard.not(
                        "which sort?",
                        "What sort of place is '" + said + "'? Write it in brackets after the name, as: " + said
                                + " (cool room)."));
    }

    /** The sort that its last words name, as many of them as can; else its first word. */
    private static Optional<Sort> sort(String name) {
        List<String> words = List.of(BLANKS.split(name, -1));
        Stream<String> endings = IntStream.range(0, words.size())
                .mapToObj(from -> words.subList(from, words.size()).stream().collect(Collectors.joining(" ")));
        return Stream.concat(endings, Stream.of(words.get(0)))
                .flatMap(ending -> PlaceTerms.SORTS.findWhole(ending).stream())
                .findFirst();
    }
}
