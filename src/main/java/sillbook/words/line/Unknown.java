// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.text.Near;
import sillbook.words.Complaint;
import sillbook.words.Counts;

/** What to say of words that make no sense. */
final class Unknown {
    /** What is worth naming, in this order; the rest a form says of itself. */
    private static final List<String> NAMED = List.of(
            "pot", "place", "variety", "kind", "plan", "figure", "setting", "stage", "finding", "care", "end", "day");

    private Unknown() {}

    /** {@code 'sprg' is no place, variety or day.} */
    static Optional<Complaint> complaint(Form form, Filled filled, Bench bench) {
        return filled.unknown().stream().findFirst().map(at -> {
            String words = at.of(filled.line().line());
            List<String> had = form.slots().stream().map(Slot::noun).toList();
            List<String> nouns = NAMED.stream().filter(had::contains).toList();
            return new Complaint(
                    "not understood",
                    (nouns.isEmpty()
                                    ? "'" + words + "' makes no sense here."
                                    : "'" + words + "' is no " + Counts.or(nouns) + ".")
                            + guess(words, form, filled, bench));
        });
    }

    private static String guess(String words, Form form, Filled filled, Bench bench) {
        List<String> known = form.slots().stream()
                .flatMap(slot -> slot.sense().offers("", bench).stream())
                .map(Sense.Offer::text)
                .toList();
        return new DayInName(filled)
                .beforeUnknown()
                .or(() -> Near.closest(words, known).map(near -> "Did you mean " + near + "?"))
                .map(says -> " " + says)
                .or(() -> howToMake(words, form, filled).map(how -> " " + how))
                .orElse("");
    }

    private static Optional<String> howToMake(String words, Form form, Filled filled) {
        return form.slots().stream()
                .filter(slot -> !filled.has(slot))
                .flatMap(slot -> slot.sense().howToMake(words).stream())
                .findFirst();
    }
}
