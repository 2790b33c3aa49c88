// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Function;
import sillbook.text.Fold;

/**
 * Things that have names, found by what is typed of them: by the whole name before a beginning, by a beginning before the
 * beginning of a later word ({@code fridge} for {@code garage fridge}).
 */
record Names<T>(Collection<T> things, Function<? super T, String> name) {
    private static final int SHORTEST_BEGINNING = 2;

    /** All that are found at the best of the three ways, in the order of the things. */
    List<T> find(String typed) {
        String sought = Fold.of(typed).strip();
        List<T> found = matching(sought, String::equals);
        if (!found.isEmpty() || sought.length() < SHORTEST_BEGINNING) {
            return found;
        }
        return beginning(sought);
    }

    /** Whether something has exactly this name. */
    boolean isWhole(String typed) {
        return !matching(Fold.of(typed).strip(), String::equals).isEmpty();
    }

    List<T> whole(String typed) {
        return matching(Fold.of(typed).strip(), String::equals);
    }

    /** All that what is typed may begin, those whose first word it begins before the others. */
    List<T> beginning(String typed) {
        String sought = Fold.of(typed).strip();
        List<T> found = matching(sought, String::startsWith);
        return found.isEmpty() ? matching(sought, Names::beginsAWord) : found;
    }

    private List<T> matching(String sought, BiPredicate<String, String> test) {
        List<T> found = new ArrayList<>();
        for (T thing : things) {
            if (test.test(Fold.of(name.apply(thing)), sought)) {
                found.add(thing);
            }
        }
        return found;
    }

    private static boolean beginsAWord(String name, String sought) {
        return name.contains(" " + sought) || name.contains("-" + sought);
    }
}
