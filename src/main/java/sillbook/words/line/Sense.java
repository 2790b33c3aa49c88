// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A way to make sense of words.
 *
 * @param <T> what they mean
 */
interface Sense<T> {
    /** The longest stretch of words, from this one on, that makes sense. */
    Optional<Found<T>> at(Written line, int from, Bench bench);

    /** What a beginning could become, best first. */
    default List<Offer> offers(String beginning, Bench bench) {
        return List.of();
    }

    /** How something new with this name would be written; empty where nothing new is made. */
    default Optional<String> howToMake(String name) {
        return Optional.empty();
    }

    /** How something else would be written that such words may have been meant for, where they stand a second time. */
    default Optional<String> elseMeant(String words) {
        return Optional.empty();
    }

    /** What a beginning inside brackets could become, best first. */
    default List<Offer> offersWithin(String beginning, Bench bench) {
        return List.of();
    }

    /** The same words, meaning something made of what they mean here. */
    default <R> Sense<R> map(Function<? super T, R> change) {
        Sense<T> self = this;
        return new Sense<>() {
            @Override
            public Optional<Found<R>> at(Written line, int from, Bench bench) {
                return self.at(line, from, bench)
                        .map(found -> new Found<>(found.end(), found.meaning().map(change), found.sure()));
            }

            @Override
            public List<Offer> offers(String beginning, Bench bench) {
                return self.offers(beginning, bench);
            }

            @Override
            public List<Offer> offersWithin(String beginning, Bench bench) {
                return self.offersWithin(beginning, bench);
            }
        };
    }

    /**
     * What a beginning could become.
     *
     * @param rank the lower the sooner it is offered
     */
    record Offer(String text, String shown, String aside, Rank rank) {
        Offer saying(String otherAside) {
            return new Offer(text, shown, otherAside, rank);
        }

        static Offer of(String text, String aside, Rank rank) {
            return new Offer(text, text, aside, rank);
        }
    }

    /** The order in which completions stand. */
    enum Rank {
        /** The grower's own names. */
        OWN,
        DAY,
        /** Words of the program and the handbook. */
        WORD,
        /** Something new. */
        NEW
    }
}
