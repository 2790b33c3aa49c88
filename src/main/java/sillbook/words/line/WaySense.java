// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.UsualWay;
import sillbook.words.Heard;

/** {@code way kitchen pans}: a usual way, or a new one with the word new in brackets. Any other name after it is wrong. */
final class WaySense implements Sense<Named<UsualWay>> {
    private static final List<String> LEADS = List.of("way", "usual way");

    static final WaySense SENSE = new WaySense();

    private final Sense<Named<UsualWay>> led =
            new LedSense<>(LEADS, new NamingSense<>(MakingWay.KNOWN, new MakingWay()));

    private WaySense() {}

    @Override
    public Optional<Found<Named<UsualWay>>> at(Written line, int from, Bench bench) {
        return led.at(line, from, bench)
                .or(() -> Senses.leadIn(line, from, LEADS)
                        .filter(start -> line.phraseEnd(start) > start)
                        .map(start -> unknown(line.text(start, line.phraseEnd(start)), line.phraseEnd(start), bench)));
    }

    private static Found<Named<UsualWay>> unknown(String name, int end, Bench bench) {
        List<String> known =
                bench.journal().usualWays().all().stream().map(UsualWay::name).toList();
        String there = known.isEmpty() ? "" : " There are: " + String.join(", ", known) + ".";
        return new Found<>(
                end,
                Heard.not(
                        "no usual way",
                        "No usual way is called '" + name + "'." + there
                                + " To keep what this line says as one, write: way " + name + " (new)."),
                Sure.WHOLE);
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        return led.offers(beginning, bench);
    }

    @Override
    public List<Offer> offersWithin(String beginning, Bench bench) {
        return led.offersWithin(beginning, bench);
    }
}
