// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import sillbook.text.Fold;
import sillbook.text.Near;

/**
 * The words of one set of things: each as it is said, and the other ways it is understood.
 *
 * @param noun what one of them is: {@code stage}
 * @param <T> the things
 */
public record Vocabulary<T>(String noun, List<Term<T>> terms) {
    public Vocabulary {
        terms = List.copyOf(terms);
    }

    /**
     * One thing and its words.
     *
     * @param said as the book says it
     * @param also other words for it, in small letters
     */
    public record Term<T>(T value, String said, List<String> also) {
        public Term {
            also = List.copyOf(also);
        }

        /** All its words, in small letters without accents. */
        public Stream<String> words() {
            return Stream.concat(Stream.of(Fold.of(said)), also.stream());
        }

        /** Whether one of them passes; a plain loop, because it is asked of every word of a line that is typed. */
        private boolean fits(String sought, BiPredicate<String, String> test) {
            for (String word : also) {
                if (test.test(word, sought)) {
                    return true;
                }
            }
            return test.test(Fold.of(said), sought);
        }
    }

    /** One without a term yet. */
    public static <T> Vocabulary<T> of(String noun) {
        return new Vocabulary<>(noun, List.of());
    }

    /** With one term more. */
    public Vocabulary<T> with(T value, String said, String... also) {
        List<Term<T>> more = new ArrayList<>(terms);
        more.add(new Term<>(value, said, List.of(also)));
        return new Vocabulary<>(noun, more);
    }

    /** The terms of these alone. */
    public Vocabulary<T> only(Collection<T> kept) {
        return new Vocabulary<>(
                noun, terms.stream().filter(term -> kept.contains(term.value())).toList());
    }

    /**
     * How the book says it.
     *
     * @throws IllegalArgumentException when it is not of this set
     */
    public String say(T value) {
        return terms.stream()
                .filter(term -> term.value().equals(value))
                .findFirst()
                .map(Term::said)
                .orElseThrow(() -> new IllegalArgumentException("no word for the " + noun + " " + value));
    }

    /** By one of its words, or by a beginning that no other shares; any case, with or without accents. */
    public Optional<T> find(String text) {
        String sought = Fold.of(text).strip();
        if (sought.isEmpty()) {
            return Optional.empty();
        }
        List<T> exact = matching(sought, String::equals);
        List<T> found = exact.isEmpty() ? matching(sought, String::startsWith) : exact;
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** By one of its words in full. */
    public Optional<T> findWhole(String text) {
        return matching(Fold.of(text).strip(), String::equals).stream().findFirst();
    }

    /** What is said of these, as far as a beginning leaves it open. */
    public List<T> beginning(String text) {
        return matching(Fold.of(text).strip(), String::startsWith);
    }

    public Heard<T> parse(String text) {
        return find(text).map(Heard::as).orElseGet(() -> unknown(text));
    }

    private List<T> matching(String sought, BiPredicate<String, String> test) {
        List<T> found = new ArrayList<>();
        for (Term<T> term : terms) {
            if (term.fits(sought, test) && !found.contains(term.value())) {
                found.add(term.value());
            }
        }
        return found;
    }

    private Heard<T> unknown(String text) {
        List<String> words = new ArrayList<>();
        terms.forEach(term -> words.add(term.said()));
        String ask = Near.closest(text.strip(), words)
                .map(near -> "Did you mean " + near + "?")
                .orElseGet(() -> "Write " + Counts.or(words) + ".");
        return Heard.not("no " + noun, "'" + text.strip() + "' is no " + noun + ". " + ask);
    }
}
