// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Variety;
import sillbook.text.Fold;
import sillbook.words.Vocabulary;
import sillbook.words.Vocabulary.Term;

/** What the journal has names for, as words that are found by any beginning of them. */
public final class Choices {
    private Choices() {}

    public static Vocabulary<Place> places(Journal journal) {
        return of("place", journal.places().all(), Place::name);
    }

    public static Vocabulary<Variety> varieties(Journal journal) {
        return of("variety", journal.varieties().all(), Variety::name);
    }

    /** Found by the name, and by each of its later words: {@code fridge} finds the garage fridge. */
    public static <T> Vocabulary<T> of(String noun, Collection<T> things, Function<T, String> name) {
        List<Term<T>> terms = things.stream()
                .map(thing -> new Term<>(thing, name.apply(thing), laterWords(name.apply(thing))))
                .toList();
        return new Vocabulary<>(noun, terms);
    }

    private static List<String> laterWords(String name) {
        String[] words = Fold.of(name).strip().split(" +", -1);
        return Arrays.asList(words).subList(1, words.length);
    }
}
