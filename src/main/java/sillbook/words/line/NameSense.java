// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import sillbook.words.Heard;

/**
 * Something the journal has by name.
 *
 * @param things where they are found
 * @param name what each is called
 * @param aside what is said of each where it is offered
 */
record NameSense<T>(Function<Bench, Collection<T>> things, Function<T, String> name, BiFunction<T, Bench, String> aside)
        implements Sense<T> {

    @Override
    public Optional<Found<T>> at(Written line, int from, Bench bench) {
        Names<T> names = new Names<>(things.apply(bench), name);
        for (int end = line.phraseEnd(from); end > from; end--) {
            Optional<Found<T>> found = found(names, line.text(from, end), end);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Found<T>> found(Names<T> names, String typed, int end) {
        List<T> found = names.find(typed);
        return found.stream().findFirst().map(thing -> new Found<>(end, Heard.as(thing), sure(names, typed, found)));
    }

    private Sure sure(Names<T> names, String typed, List<T> found) {
        if (found.size() > 1) {
            return Sure.OPEN;
        }
        return names.isWhole(typed) ? Sure.WHOLE : Sure.BEGINNING;
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        return new Names<>(things.apply(bench), name)
                .beginning(beginning).stream()
                        .map(thing -> Offer.of(name.apply(thing), aside.apply(thing, bench), Rank.OWN))
                        .toList();
    }
}
