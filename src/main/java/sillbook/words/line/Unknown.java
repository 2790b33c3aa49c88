// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.text.Near;
import sillbook.words.Complaint;
import sillbook.words.Counts;

/** What to say of words that make no sense. */
final class Unknown {
    private Unknown() {}

    /** {@code 'sprg' is no place, variety or day.} */
    static Optional<Complaint> complaint(Form form, Filled filled, Bench bench) {
        return filled.unknown().stream().findFirst().map(at -> {
            String words = at.of(filled.line().line());
            List<String> nouns = form.slots().stream()
                    .map(Slot::noun)
                    .filter(noun -> !noun.isEmpty())
                    .distinct()
                    .toList();
            return new Complaint(
                    "not understood", "'" + words + "' is no " + Counts.or(nouns) + "." + guess(words, form, bench));
        });
    }

    private static String guess(String words, Form form, Bench bench) {
        List<String> known = form.slots().stream()
                .flatMap(slot -> slot.sense().offers("", bench).stream())
                .map(Sense.Offer::text)
                .toList();
        return Near.closest(words, known)
                .map(near -> " Did you mean " + near + "?")
                .orElse("");
    }
}
