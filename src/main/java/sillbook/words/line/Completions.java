// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What the word at the caret may become. */
final class Completions {
    private static final int MOST = 8;

    private Completions() {}

    /** For the words that end at the caret: as many of them as begin something known, else as few as begin anything. */
    static List<Completion> at(int caret, Form form, Filled filled, Bench bench) {
        Written line = filled.line();
        int end = endingAt(caret, line);
        if (end < 0) {
            return List.of();
        }
        int first = Math.max(firstOfPhrase(line, end), filled.startOf(end));
        for (int from = first; from <= end; from++) {
            boolean within = line.isPhraseStart(from) && from > 0 && line.isMark(from - 1, "(");
            List<Completion> found = new Word(from, end + 1, within, filled, bench).completions(form);
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

    /**
     * Words being typed.
     *
     * @param within whether they stand in brackets
     */
    private record Word(int from, int end, boolean within, Filled filled, Bench bench) {
        List<Completion> completions(Form form) {
            Stretch at = filled.line().stretch(from, end);
            return Stream.concat(slots(form).flatMap(slot -> offers(slot).stream()), keywords().stream())
                    .sorted(Comparator.comparing(Sense.Offer::rank))
                    .distinct()
                    .limit(MOST)
                    .map(offer -> new Completion(at, offer.text(), offer.shown(), offer.aside()))
                    .toList();
        }

        /** While nothing else is understood the line may still have any form. */
        private Stream<Slot<?>> slots(Form form) {
            boolean open = form.keywords().isEmpty() && !filled.isAnythingOutside(from, end);
            Stream<Form> forms =
                    open ? Forms.ALL.stream().filter(any -> any.keywords().isEmpty()) : Stream.of(form);
            return forms.flatMap(any -> any.slots().stream()).distinct();
        }

        private List<Sense.Offer> keywords() {
            return from == 0 ? Keywords.offers(filled.line().text(from, end)) : List.of();
        }

        /** What a slot offers; where it is filled already, it says so and makes nothing new. */
        private List<Sense.Offer> offers(Slot<?> slot) {
            String beginning = filled.line().text(from, end);
            List<Sense.Offer> offers = within
                    ? slot.sense().offersWithin(beginning, bench)
                    : slot.sense().offers(beginning, bench);
            if (!filled.isFilledOutside(slot, from, end) || within) {
                return offers;
            }
            return offers.stream()
                    .filter(offer -> offer.rank() != Sense.Rank.NEW)
                    .map(offer -> slot.many() ? offer : offer.saying("a second " + slot.noun()))
                    .toList();
        }
    }
}
