// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import sillbook.text.Fold;
import sillbook.text.Near;
import sillbook.words.Heard;

/**
 * Things of the book that a cell may name, by their whole names.
 *
 * @param noun what one of them is: {@code place}
 */
record Known<T>(String noun, Collection<T> things, Function<T, String> name) {

    Heard<T> find(String cell) {
        List<T> found = things.stream()
                .filter(thing -> Fold.of(name.apply(thing)).equals(Fold.of(cell)))
                .toList();
        if (found.size() > 1) {
            return Heard.not("which one?", "there is more than one '" + cell + "' in the book. Leave this empty.");
        }
        return found.isEmpty() ? unknown(cell) : Heard.as(found.get(0));
    }

    private Heard<T> unknown(String cell) {
        String ask = Near.closest(cell, things.stream().map(name).toList())
                .map(near -> "Did you mean " + near + "?")
                .orElse("Write it down first, or leave this empty.");
        return Heard.not("no " + noun, "'" + cell + "' is no " + noun + " of the book. " + ask);
    }
}
