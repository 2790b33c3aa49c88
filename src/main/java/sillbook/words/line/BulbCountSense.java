// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Optional;

/** So many bulbs: {@code 30}, {@code 30 bulbs of}. A bare number that stands beside it may have been meant as a price. */
final class BulbCountSense implements Sense<Integer> {
    private static final Sense<Integer> NUMBER = Senses.number("(\\d{1,5})(?: bulbs?)?(?: of)?");

    @Override
    public Optional<Found<Integer>> at(Written line, int from, Bench bench) {
        return NUMBER.at(line, from, bench);
    }

    @Override
    public Optional<String> elseMeant(String words) {
        return words.matches("[1-9]\\d*")
                ? Optional.of("A price has its decimals, as " + words + ".00.")
                : Optional.empty();
    }
}
