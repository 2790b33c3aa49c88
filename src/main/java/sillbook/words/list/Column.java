// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import sillbook.model.Journal;
import sillbook.text.Fold;
import sillbook.words.Heard;
import sillbook.words.line.Bench;

/**
 * A column a list may have.
 *
 * @param name the word for it in the header
 * @param also other words it goes by
 * @param holds what its cells hold, as the documentation says it
 * @param isNeeded whether there is no list without it
 * @param sense how a cell that is not empty is read
 * @param says what an entry says in it, as it is said back; empty where it says nothing
 * @param <E> what a row of the list is
 * @param <T> what its cells mean
 */
public record Column<E, T>(
        String name,
        List<String> also,
        String holds,
        boolean isNeeded,
        BiFunction<String, Bench, Heard<T>> sense,
        BiFunction<E, Journal, String> says) {
    public Column {
        also = List.copyOf(also);
    }

    /** One that a list can do without, and that goes by no other word. */
    static <E, T> Column<E, T> of(
            String name, String holds, BiFunction<String, Bench, Heard<T>> sense, BiFunction<E, Journal, String> says) {
        return new Column<>(name, List.of(), holds, false, sense, says);
    }

    Column<E, T> orCalled(String... others) {
        return new Column<>(name, List.of(others), holds, isNeeded, sense, says);
    }

    Column<E, T> needed() {
        return new Column<>(name, also, holds, true, sense, says);
    }

    /** Whether a header means it; case, accents, bars and hyphens are no difference. */
    boolean isCalled(String header) {
        String word = plain(header);
        return word.equals(name) || also.contains(word);
    }

    private static String plain(String header) {
        return Fold.of(header).replaceAll("[\\s_-]+", " ").strip();
    }

    /** What an entry came to say otherwise: {@code 50 cm, was 45 cm}; empty where it says the same, be it in small letters. */
    Optional<String> difference(E before, E after, Journal journal) {
        String was = says.apply(before, journal);
        String is = says.apply(after, journal);
        return Fold.of(was).equals(Fold.of(is))
                ? Optional.empty()
                : Optional.of((is.isEmpty() ? "no " + name : is) + (was.isEmpty() ? "" : ", was " + was));
    }
}
