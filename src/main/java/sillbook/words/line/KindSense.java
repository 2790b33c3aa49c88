// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.Kind;
import sillbook.words.Heard;

/** A kind of bulb by its whole name, perhaps with its class or division. */
final class KindSense implements Sense<Kind> {
    static final KindSense SENSE = new KindSense();

    private static final Sense<Kind> NAMES =
            Senses.longest((words, bench) -> bench.kinds().find(words).map(Heard::as));

    private KindSense() {}

    @Override
    public Optional<Found<Kind>> at(Written line, int from, Bench bench) {
        return NAMES.at(line, from, bench);
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        return new MakingVariety().offers(beginning, bench);
    }

    @Override
    public List<Offer> offersWithin(String beginning, Bench bench) {
        return offers(beginning, bench);
    }
}
