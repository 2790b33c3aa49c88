// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import sillbook.model.Day;
import sillbook.model.Length;
import sillbook.text.Fold;
import sillbook.words.Days;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Looking;
import sillbook.words.Vocabulary;

/** The senses that need no names of the journal. */
final class Senses {
    private static final int MOST_WORDS = 10;

    private Senses() {}

    /** What is read from a stretch of plain words; empty when it makes no sense there. */
    interface Stretches<T> {
        Optional<Heard<T>> read(String words, Bench bench);
    }

    /** The longest stretch within the phrase that can be read. */
    static <T> Sense<T> longest(Stretches<T> stretches) {
        return (line, from, bench) -> {
            for (int end = lastEnd(line, from); end > from; end--) {
                Optional<Heard<T>> read = stretches.read(line.text(from, end), bench);
                if (read.isPresent()) {
                    return Optional.of(new Found<>(end, read.get(), Sure.WHOLE));
                }
            }
            return Optional.empty();
        };
    }

    /** Quoted words are names, so a stretch ends before them. */
    private static int lastEnd(Written line, int from) {
        int most = Math.min(line.phraseEnd(from), from + MOST_WORDS);
        int end = from;
        while (end < most && !line.isQuoted(end)) {
            end++;
        }
        return end;
    }

    /** Words that match a pattern as a whole, in small letters without accents. */
    static <T> Sense<T> matching(String pattern, Function<Groups, Heard<T>> meaning) {
        Pattern compiled = Pattern.compile(pattern);
        return longest((words, bench) -> Groups.of(compiled, Fold.of(words)).map(meaning));
    }

    /** A number of at most six digits, with what stands around it: {@code room (\d+)}. */
    static Sense<Integer> number(String pattern) {
        return matching(pattern, said -> Heard.as(Integer.parseInt(said.text(1))));
    }

    /** A word that is there or not. */
    static Sense<Boolean> flag(String pattern) {
        return matching(pattern, said -> Heard.as(true));
    }

    static <T> Sense<T> oneOf(Vocabulary<T> vocabulary) {
        return new TermSense<>("", vocabulary);
    }

    /** One of these after a word that leads to it: {@code packet yes}. */
    static <T> Sense<T> oneOf(String before, Vocabulary<T> vocabulary) {
        return new TermSense<>(before, vocabulary);
    }

    /** One of these after one of several words that lead to it: {@code colours dark}. */
    static <T> Sense<T> led(List<String> before, Vocabulary<T> vocabulary) {
        return any(before.stream().map(word -> oneOf(word, vocabulary)).toList());
    }

    /** A length that names its unit, so that it can be nothing else. */
    static Sense<Length> length() {
        return longest((words, bench) -> Lengths.isSure(words) ? Optional.of(Lengths.parse(words)) : Optional.empty());
    }

    static Sense<Day> day(Looking looking) {
        Sense<Day> days = longest((words, bench) -> bench.days(looking).tryParse(words));
        return new Sense<>() {
            @Override
            public Optional<Found<Day>> at(Written line, int from, Bench bench) {
                return days.at(line, from, bench);
            }

            @Override
            public List<Offer> offers(String beginning, Bench bench) {
                return bench
                        .days(looking)
                        .tryParse(beginning)
                        .flatMap(Heard::value)
                        .map(day -> Offer.of(Days.full(day), "", Rank.DAY))
                        .stream()
                        .toList();
            }
        };
    }

    /** All that follows a word, to the end of the line. */
    static Sense<String> restAfter(String... words) {
        return (line, from, bench) ->
                leadIn(line, from, List.of(words)).map(start -> Found.whole(line.size(), line.rest(start)));
    }

    /** What follows a word, to the end of the phrase. */
    static Sense<String> phraseAfter(String... words) {
        return (line, from, bench) -> leadIn(line, from, List.of(words))
                .filter(start -> line.phraseEnd(start) > start)
                .map(start -> Found.whole(line.phraseEnd(start), line.text(start, line.phraseEnd(start))));
    }

    /** The whole phrase that begins with this word of the line; for what a keyword leads to. */
    static Sense<String> phraseAt(int word) {
        return (line, from, bench) -> {
            int end = line.phraseEnd(from);
            return from == word && end > from ? Optional.of(Found.whole(end, line.text(from, end))) : Optional.empty();
        };
    }

    /** Whichever of these makes sense of most words; of equals the surest, then the first. */
    static <T> Sense<T> any(List<Sense<T>> senses) {
        return new Sense<>() {
            @Override
            public Optional<Found<T>> at(Written line, int from, Bench bench) {
                return senses.stream()
                        .flatMap(sense -> sense.at(line, from, bench).stream())
                        .min(Comparator.<Found<T>>comparingInt(found -> -found.end())
                                .thenComparing(Found::sure));
            }

            @Override
            public List<Offer> offers(String beginning, Bench bench) {
                return senses.stream()
                        .flatMap(sense -> sense.offers(beginning, bench).stream())
                        .toList();
            }
        };
    }

    /** Where begins what one of these words leads to. */
    static Optional<Integer> leadIn(Written line, int from, List<String> words) {
        for (String word : words) {
            int end = from + word.split(" ", -1).length;
            if (end <= line.phraseEnd(from) && line.folded(from, end).equals(word)) {
                return Optional.of(line.isMark(end, ":") ? end + 1 : end);
            }
        }
        return Optional.empty();
    }
}
