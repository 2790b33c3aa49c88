// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What the word at the caret may become. */
final class Completions {
    private static final int MOST = 8;
    private static final int MOST_WORDS = 4;

    private Completions() {}

    /** For the words that end at the caret: as many of them as begin something known, else as few as begin anything. */
    static List<Completion> at(int caret, Form form, Filled filled, Bench bench) {
        Written line = filled.line();
        int end = endingAt(caret, line);
        if (end < 0) {
            return List.of();
        }
        int first = Math.max(firstOfPhrase(line, end), end + 1 - MOST_WORDS);
        for (int from = first; from <= end; from++) {
            List<Completion> found = offers(line.stretch(from, end + 1), line.text(from, end + 1), form, bench);
            if (!found.isEmpty()) {
                return found;
            }
        }
        return List.of();
    }

    /** The word that the caret stands at the end of; below 0 when it stands at none. */
    private static int endingAt(int caret, Written line) {
        for (int i = 0; i < line.size(); i++) {
            if (line.words().get(i).at().toExclusive() == caret && !line.isMark(i, ",;:()")) {
                return i;
            }
        }
        return -1;
    }

    private static int firstOfPhrase(Written line, int word) {
        int first = word;
        while (!line.isPhraseStart(first)) {
            first--;
        }
        return first;
    }

    private static List<Completion> offers(Stretch at, String beginning, Form form, Bench bench) {
        List<Sense.Offer> offers = new ArrayList<>();
        form.slots().forEach(slot -> offers.addAll(slot.sense().offers(beginning, bench)));
        return offers.stream()
                .sorted(Comparator.comparing(Sense.Offer::rank))
                .distinct()
                .limit(MOST)
                .map(offer -> new Completion(at, offer.text(), offer.shown(), offer.aside()))
                .toList();
    }
}
