// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Entity;
import sillbook.text.Fold;
import sillbook.words.Heard;

/**
 * Something the journal has by name, or something new: its name, and in brackets what it is. What is in brackets also
 * tells two of one name apart.
 *
 * @param known those the journal has
 * @param what what they are
 */
record NamingSense<T extends Entity<T>>(NameSense<T> known, Making<T> what) implements Sense<Named<T>> {

    private static final int SHORTEST_NAME = 2;

    /** How something is made from its name and what it is. */
    interface Making<T> {
        /** What one is: {@code variety}. */
        String noun();

        Heard<T> make(String name, String what, Bench bench);

        /** Whether one of that name is already what the brackets say. */
        boolean is(T thing, T described);

        /** One thing that may stand in the brackets. */
        String example();

        /** What may stand in the brackets. */
        List<Offer> offers(String beginning, Bench bench);
    }

    @Override
    public Optional<Found<Named<T>>> at(Written line, int from, Bench bench) {
        int end = line.phraseEnd(from);
        if (end > from && line.isMark(end, "(")) {
            return Optional.of(described(line, from, end, bench));
        }
        return known.at(line, from, bench)
                .map(found -> new Found<>(
                        found.end(), found.meaning().map(thing -> new Named<>(thing, false)), found.sure()));
    }

    private Found<Named<T>> described(Written line, int from, int open, Bench bench) {
        int close = line.phraseEnd(open + 1);
        int end = line.isMark(close, ")") ? close + 1 : close;
        String name = line.text(from, open);
        Heard<T> made = what.make(name, line.text(open + 1, close), bench);
        Optional<T> there = made.value().flatMap(described -> there(name, described, bench));
        return there.map(thing -> new Found<>(end, Heard.as(new Named<>(thing, false)), Sure.NEW))
                .orElseGet(() -> new Found<>(end, made.map(thing -> new Named<>(thing, true)), Sure.NEW));
    }

    private Optional<T> there(String name, T described, Bench bench) {
        return known.things().apply(bench).stream()
                .filter(thing ->
                        Fold.of(known.name().apply(thing)).equals(Fold.of(name).strip()))
                .filter(thing -> what.is(thing, described))
                .findFirst();
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        List<Offer> offers = new ArrayList<>(known.offers(beginning, bench));
        String name = beginning.strip();
        boolean taken = new Names<>(known.things().apply(bench), known.name()).isWhole(name);
        if (name.length() >= SHORTEST_NAME && !taken && Character.isLetter(name.codePointAt(0))) {
            offers.add(new Offer(name + " (", "make '" + name + "' a new " + what.noun(), "", Rank.NEW));
        }
        return offers;
    }

    @Override
    public Optional<String> howToMake(String name) {
        return Optional.of("A new " + what.noun() + " is written so: " + name + " (" + what.example() + ").");
    }

    @Override
    public List<Offer> offersWithin(String beginning, Bench bench) {
        return what.offers(beginning, bench).stream()
                .map(offer -> new Offer(offer.text() + ")", offer.shown(), offer.aside(), offer.rank()))
                .toList();
    }
}
