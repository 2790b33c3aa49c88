// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sillbook.text.Fold;

/** Words looked for, in any order, without regard to accents and capitals. A label is meant whole. */
record Words(List<String> wanted) {
    private static final Pattern LABEL = Pattern.compile("[a-z]{1,3}\\d{1,4}");
    private static final Pattern APART = Pattern.compile("[\\s,]+");

    Words {
        wanted = List.copyOf(wanted);
    }

    static Words of(String sought) {
        return new Words(APART.splitAsStream(Fold.of(sought).strip())
                .filter(word -> !word.isEmpty())
                .toList());
    }

    boolean areIn(String text) {
        String folded = Fold.of(text);
        return wanted.stream().allMatch(word -> isIn(word, folded));
    }

    private static boolean isIn(String word, String folded) {
        return LABEL.matcher(word).matches()
                ? Stream.of(folded.split(" ", -1)).anyMatch(word::equals)
                : folded.contains(word);
    }
}
