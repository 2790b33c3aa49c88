// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Optional;
import java.util.function.Function;

/**
 * What a text was understood as, or why it was not.
 *
 * @param <T> what was asked for
 */
public sealed interface Heard<T> {
    /** The text makes sense. */
    record As<T>(T meaning) implements Heard<T> {
        @Override
        public <R> R fold(Function<? super T, R> as, Function<? super Complaint, R> not) {
            return as.apply(meaning);
        }
    }

    /** It does not. */
    record Not<T>(Complaint why) implements Heard<T> {
        @Override
        public <R> R fold(Function<? super T, R> as, Function<? super Complaint, R> not) {
            return not.apply(why);
        }
    }

    <R> R fold(Function<? super T, R> as, Function<? super Complaint, R> not);

    static <T> Heard<T> as(T value) {
        return new As<>(value);
    }

    static <T> Heard<T> not(String brief, String sentence) {
        return new Not<>(new Complaint(brief, sentence));
    }

    default <R> Heard<R> map(Function<? super T, R> change) {
        return fold(value -> as(change.apply(value)), Not::new);
    }

    default <R> Heard<R> then(Function<? super T, Heard<R>> next) {
        return fold(next, Not::new);
    }

    default Optional<T> value() {
        return fold(Optional::of, why -> Optional.empty());
    }

    default Optional<Complaint> complaint() {
        return fold(value -> Optional.empty(), Optional::of);
    }
}
