// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Potting;
import sillbook.model.UsualWay;
import sillbook.text.Fold;
import sillbook.words.Heard;
import sillbook.words.PottingWords;

/** {@code way kitchen pans (new)}: a usual way that the rest of its line describes. */
final class MakingWay implements NamingSense.Making<UsualWay> {
    static final NameSense<UsualWay> KNOWN = new NameSense<>(
            bench -> bench.journal().usualWays().all(),
            UsualWay::name,
            (way, bench) -> new PottingWords(bench.journal()).say(way));

    private static final String NEW = "new";

    @Override
    public String noun() {
        return "usual way";
    }

    @Override
    public Heard<UsualWay> make(String name, String what, Bench bench) {
        return Fold.of(what).strip().equals(NEW)
                ? Heard.as(bare(name, bench))
                : Heard.not("only new", "A usual way made on the spot is written so: way " + name + " (new).");
    }

    /** One of which only the name is known. */
    static UsualWay bare(String name, Bench bench) {
        return new UsualWay(
                bench.ids().next(),
                name,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.Holes.NOT_SAID,
                Potting.Depth.NOT_SAID,
                "",
                "");
    }

    @Override
    public boolean is(UsualWay way, UsualWay described) {
        return true;
    }

    @Override
    public String example() {
        return NEW;
    }

    @Override
    public List<Sense.Offer> offers(String beginning, Bench bench) {
        return Stream.of(NEW)
                .filter(word -> word.startsWith(Fold.of(beginning).strip()))
                .map(word -> Sense.Offer.of(word, "as this line says", Sense.Rank.WORD))
                .toList();
    }
}
