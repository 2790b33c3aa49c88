// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.words.Complaint;

/**
 * Fills the slots of forms with the words of one line. At each word the open slot that makes sense of most words has
 * them; of equals, the surer one, then the one the form names first. What a sense finds is remembered, because forms
 * share slots.
 */
final class Reader {
    private static final Comparator<Match<?>> BEST = Comparator.<Match<?>, Boolean>comparing(
                    match -> match.found.sure() == Sure.NEW)
            .thenComparing(match -> -match.found.end())
            .thenComparing(match -> match.found.meaning().value().isEmpty())
            .thenComparing(match -> match.found.sure());

    /** Words that say nothing here; they may stand anywhere. */
    private static final Set<String> FILLERS = Set.of(
            "+", "&", "a", "an", "and", "are", "at", "in", "into", "is", "it", "of", "on", "the", "to", "was", "were",
            "with");

    private final Written line;
    private final Bench bench;
    private final Map<Sought, Optional<? extends Found<?>>> found = new HashMap<>();

    Reader(Written line, Bench bench) {
        this.line = line;
        this.bench = bench;
    }

    private record Sought(Sense<?> sense, int from) {}

    private record Match<T>(Slot<T> slot, Found<T> found) {
        void fill(Filled filled, int from, boolean tentative) {
            filled.fill(slot, new Filled.Filling<>(from, found, tentative));
        }
    }

    /** Fills a form's slots, from a word on. */
    Filled read(Form form, int from) {
        Filled filled = new Filled(line);
        int at = from;
        while (at < line.size()) {
            at = line.isMark(at, ",;:()") ? at + 1 : step(form, filled, at);
        }
        return filled;
    }

    /** Puts the words that begin here where they belong, and says where the next begin. */
    private int step(Form form, Filled filled, int at) {
        Optional<Match<?>> best = best(form, filled, at);
        best.ifPresentOrElse(match -> take(form, filled, match, at), () -> leaveOver(form, filled, at));
        return best.map(match -> match.found.end()).orElse(at + 1);
    }

    private Optional<Match<?>> best(Form form, Filled filled, int at) {
        boolean free = isFree(form, filled) && line.isPhraseStart(at) && !isUnderstood(form, filled, at);
        return matches(form, at)
                .filter(match -> filled.isOpen(match.slot))
                .filter(match -> isFree(match.slot) == free)
                .min(BEST);
    }

    private static boolean isFree(Slot<?> slot) {
        return slot.sense() == FreePhrase.SENSE;
    }

    /** Whether a phrase may still be anything. */
    private static boolean isFree(Form form, Filled filled) {
        return form.slots().stream().anyMatch(slot -> isFree(slot) && filled.isOpen(slot));
    }

    /** Whether the phrase that begins here makes sense to its end without being free. */
    private boolean isUnderstood(Form form, Filled filled, int from) {
        int end = line.phraseEnd(from);
        int at = from;
        while (at < end) {
            int next = matches(form, at)
                    .filter(match -> filled.isOpen(match.slot) && !isFree(match.slot))
                    .min(BEST)
                    .map(match -> match.found.end())
                    .orElse(isFiller(at) ? at + 1 : at);
            if (next == at) {
                return false;
            }
            at = next;
        }
        return true;
    }

    private boolean isFiller(int at) {
        return !line.isQuoted(at) && FILLERS.contains(line.folded(at, at + 1));
    }

    private void take(Form form, Filled filled, Match<?> match, int at) {
        boolean other = match.found.sure() == Sure.BEGINNING
                && matches(form, at)
                        .anyMatch(rival -> rival.found.end() == match.found.end() && rival.found.sure() == Sure.WHOLE);
        boolean tentative = other || match.found.sure() == Sure.OPEN;
        match.fill(filled, at, tentative);
        if (tentative) {
            String words = line.text(at, match.found.end());
            filled.doubt(new Complaint(
                    "more than one",
                    "'" + words + "' may be more than one thing. Write more of it, or let Tab take one."));
        }
    }

    private void leaveOver(Form form, Filled filled, int at) {
        if (isFiller(at)) {
            return;
        }
        Optional<Match<?>> second = matches(form, at)
                .filter(match -> match.found.sure() == Sure.WHOLE)
                .min(BEST);
        second.ifPresent(match -> filled.complain(twice(line.text(at, match.found.end()), match.slot)));
        filled.leaveOver(at);
    }

    private static Complaint twice(String words, Slot<?> slot) {
        String noun = slot.noun();
        String otherwise = slot.sense().elseMeant(words).map(how -> " " + how).orElse("");
        return noun.isEmpty()
                ? new Complaint("said twice", "'" + words + "' is said a second time. Write it only once.")
                : new Complaint(
                        "a second " + noun, "'" + words + "' is a second " + noun + ". Write only one." + otherwise);
    }

    private Stream<Match<?>> matches(Form form, int at) {
        return form.slots().stream().flatMap(slot -> match(slot, at).stream());
    }

    private <T> Optional<Match<T>> match(Slot<T> slot, int at) {
        return find(slot.sense(), at).map(found -> new Match<>(slot, found));
    }

    /** What is remembered of a sense is what that sense found. */
    @SuppressWarnings("unchecked")
    private <T> Optional<Found<T>> find(Sense<T> sense, int at) {
        return (Optional<Found<T>>) found.computeIfAbsent(new Sought(sense, at), sought -> sense.at(line, at, bench));
    }
}
