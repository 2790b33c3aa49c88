// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.text.Fold;

/**
 * Something after words that lead to it: {@code sent Soot and Honey}.
 *
 * @param leads those words, in small letters
 */
record LedSense<T>(List<String> leads, Sense<T> led) implements Sense<T> {
    @Override
    public Optional<Found<T>> at(Written line, int from, Bench bench) {
        return Senses.leadIn(line, from, leads).flatMap(start -> led.at(line, start, bench));
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        String typed = Fold.of(beginning).stripLeading();
        return leads.stream()
                .map(lead -> lead + " ")
                .filter(lead -> typed.startsWith(lead) && beginning.length() > lead.length())
                .flatMap(lead -> led.offers(beginning.stripLeading().substring(lead.length()), bench).stream()
                        .map(offer -> new Offer(lead + offer.text(), offer.shown(), offer.aside(), offer.rank())))
                .toList();
    }

    @Override
    public Optional<String> howToMake(String name) {
        return led.howToMake(name);
    }

    @Override
    public List<Offer> offersWithin(String beginning, Bench bench) {
        return led.offersWithin(beginning, bench);
    }
}
