// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.text.Near;
import sillbook.words.Counts;
import sillbook.words.Heard;

/**
 * Which column of a table is which.
 *
 * @param places of the columns that are known, counted from 0
 * @param leftOut the names of those that are not
 */
record Header(Map<Column<?, ?>, Integer> places, List<String> leftOut) {
    Header {
        places = Map.copyOf(places);
        leftOut = List.copyOf(leftOut);
    }

    static Heard<Header> read(List<String> names, ListSort sort) {
        Map<Column<?, ?>, Integer> places = new LinkedHashMap<>();
        List<String> leftOut = new ArrayList<>();
        for (int place = 0; place < names.size(); place++) {
            String name = names.get(place).strip();
            Optional<? extends Column<?, ?>> column =
                    sort.columns().stream().filter(one -> one.isCalled(name)).findFirst();
            if (column.isPresent() && places.putIfAbsent(column.get(), place) != null) {
                return Heard.not(
                        "a column twice",
                        "There are two columns for the " + column.get().name()
                                + ". Leave one, or give the other another name.");
            }
            if (column.isEmpty() && !name.isEmpty()) {
                leftOut.add(name);
            }
        }
        return whole(new Header(places, leftOut), sort);
    }

    private static Heard<Header> whole(Header header, ListSort sort) {
        List<String> wanting = sort.columns().stream()
                .filter(Column::isNeeded)
                .filter(column -> !header.places.containsKey(column))
                .<String>map(Column::name)
                .toList();
        if (wanting.isEmpty()) {
            return Heard.as(header);
        }
        List<String> all = sort.columns().stream().<String>map(Column::name).toList();
        return Heard.not(
                "no " + wanting.get(0),
                "The first row names no column " + Counts.or(wanting) + header.near(wanting.get(0)) + ". A list of "
                        + sort.word() + " may have these: " + Counts.and(all) + ".");
    }

    private String near(String wanting) {
        return Near.closest(wanting, leftOut)
                .map(name -> "; '" + name + "' may be meant for one")
                .orElse("");
    }

    Optional<Integer> place(Column<?, ?> column) {
        return Optional.ofNullable(places.get(column));
    }
}
