// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What the grower means to do with a variety in a season. One of an earlier season stays as it was; it is shown until the
 * new season has its own.
 */
public record Choice(Id<Choice> id, Id<Variety> variety, Season season, Mark mark) implements Entity<Choice> {

    /** What is meant: bulbs of it, none of it, or nothing yet. */
    public sealed interface Mark {
        <R> R fold(Function<Chosen, R> chosen, Function<SetAside, R> setAside, Supplier<R> undecided);
    }

    /**
     * It is to be grown.
     *
     * @param bulbs how many are wanted
     */
    public record Chosen(int bulbs) implements Mark {
        public Chosen {
            if (bulbs < 1) {
                throw new IllegalArgumentException("at least one bulb is chosen, not " + bulbs);
            }
        }

        @Override
        public <R> R fold(Function<Chosen, R> chosen, Function<SetAside, R> setAside, Supplier<R> undecided) {
            return chosen.apply(this);
        }
    }

    /**
     * It is not to be grown.
     *
     * @param reason in the grower's words; may be empty
     */
    public record SetAside(String reason) implements Mark {
        @Override
        public <R> R fold(Function<Chosen, R> chosen, Function<SetAside, R> setAside, Supplier<R> undecided) {
            return setAside.apply(this);
        }
    }

    /** Whatever an earlier season's mark says, nothing is decided for this one. */
    public record Undecided() implements Mark {
        @Override
        public <R> R fold(Function<Chosen, R> chosen, Function<SetAside, R> setAside, Supplier<R> undecided) {
            return undecided.get();
        }
    }

    /** How many bulbs are wanted; empty where it is not chosen. */
    public Optional<Integer> bulbs() {
        return mark.fold(chosen -> Optional.of(chosen.bulbs()), setAside -> Optional.empty(), Optional::empty);
    }

    /** Of the bulbs wanted, how many the season neither has nor is to have by a purchase; none where it is not chosen. */
    public int toOrder(Journal journal) {
        int provided = journal.purchases().all().stream()
                .filter(purchase -> purchase.variety().equals(variety))
                .filter(purchase -> purchase.season().equals(season))
                .mapToInt(Purchase::provides)
                .sum();
        return Math.max(0, bulbs().orElse(0) - provided);
    }

    /** Whether it is chosen or set aside. */
    public boolean isDecided() {
        return mark.fold(chosen -> true, setAside -> true, () -> false);
    }

    /** Why it is set aside, in the grower's words; empty where it is not, or nobody said. */
    public Optional<String> whySetAside() {
        Optional<String> reason =
                mark.fold(chosen -> Optional.empty(), setAside -> Optional.of(setAside.reason()), Optional::empty);
        return reason.filter(said -> !said.isEmpty());
    }

    public boolean isSetAside() {
        return mark.fold(chosen -> false, setAside -> true, () -> false);
    }

    /** The same choice, made otherwise. */
    public Choice with(Mark other) {
        return new Choice(id, variety, season, other);
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.of(variety);
    }
}
