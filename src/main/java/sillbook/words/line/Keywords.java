// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.text.Fold;

/** The words that lead a line to one form. */
final class Keywords {
    private Keywords() {}

    /** Where a form's own words begin: after its keyword, or at once; empty when the line does not begin with it. */
    static Optional<Integer> end(Form form, Written line) {
        if (form.keywords().isEmpty()) {
            return Optional.of(0);
        }
        return form.keywords().stream()
                .flatMap(keyword -> end(keyword, line).stream())
                .findFirst();
    }

    private static Optional<Integer> end(String keyword, Written line) {
        int words = keyword.split(" ", -1).length;
        boolean begins = words <= line.phraseEnd(0)
                && !line.isQuoted(0)
                && line.folded(0, words).equals(keyword);
        return begins ? Optional.of(words) : Optional.empty();
    }

    /** The keywords that what is typed may begin. */
    static List<Sense.Offer> offers(String beginning) {
        String typed = Fold.of(beginning).strip();
        return Forms.ALL.stream()
                .flatMap(form -> form.keywords().stream())
                .filter(keyword -> keyword.startsWith(typed))
                .map(keyword -> Sense.Offer.of(keyword, "", Sense.Rank.WORD))
                .toList();
    }
}
