// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.text.Fold;
import sillbook.words.Heard;
import sillbook.words.Vocabulary;

/**
 * One of a fixed set of words.
 *
 * @param before a word that has to stand before it; may be empty
 */
record TermSense<T>(String before, Vocabulary<T> vocabulary) implements Sense<T> {
    private static final int MOST_WORDS = 5;
    private static final int SHORTEST_BEGINNING = 2;

    /** Words that begin a term, but say too little alone to be taken for it. */
    private static final Set<String> NOT_ALONE = Set.of("no", "not", "in", "into", "the", "to");

    @Override
    public Optional<Found<T>> at(Written line, int from, Bench bench) {
        int start = start(line, from);
        int end = Math.min(line.phraseEnd(from), start + MOST_WORDS);
        for (; start >= from && end > start; end--) {
            Optional<Found<T>> found = found(line.folded(start, end), end);
            if (found.isPresent() && !line.isQuoted(start)) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Where the term itself begins; before {@code from} when the word that leads to it is not there. */
    private int start(Written line, int from) {
        if (before.isEmpty()) {
            return from;
        }
        boolean led = line.phraseEnd(from) > from && line.folded(from, from + 1).equals(before);
        return led ? from + 1 : from - 1;
    }

    private Optional<Found<T>> found(String words, int end) {
        return vocabulary.findWhole(words).map(term -> Found.whole(end, term)).or(() -> begun(words, end));
    }

    private Optional<Found<T>> begun(String words, int end) {
        if (words.length() < SHORTEST_BEGINNING || NOT_ALONE.contains(words)) {
            return Optional.empty();
        }
        List<T> open = vocabulary.beginning(words);
        return open.stream()
                .findFirst()
                .map(term -> new Found<>(end, Heard.as(term), open.size() == 1 ? Sure.BEGINNING : Sure.OPEN));
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        String lead = before.isEmpty() ? "" : before + " ";
        String typed = Fold.of(beginning).strip();
        return vocabulary.terms().stream()
                .filter(term -> begins(lead, term, typed))
                .map(term -> Offer.of(lead + term.said(), "", Rank.WORD))
                .toList();
    }

    private static boolean begins(String lead, Vocabulary.Term<?> term, String typed) {
        return term.words().anyMatch(word -> (lead + word).startsWith(typed));
    }
}
