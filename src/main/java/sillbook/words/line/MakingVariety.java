// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.model.Variety;
import sillbook.words.Heard;
import sillbook.words.Kinds;

/** {@code Marrow Lane (tulip triumph)}. */
final class MakingVariety implements NamingSense.Making<Variety> {
    @Override
    public String noun() {
        return "variety";
    }

    @Override
    public Heard<Variety> make(String name, String kind, Bench bench) {
        return bench.kinds().parse(kind).map(known -> Variety.of(bench.ids().next(), name, known));
    }

    @Override
    public boolean is(Variety variety, Variety described) {
        boolean sameGroup = described.kind().group().isEmpty()
                || variety.kind().group().equals(described.kind().group());
        return sameGroup && variety.kind().name().equals(described.kind().name());
    }

    @Override
    public String example() {
        return "tulip triumph";
    }

    @Override
    public List<Sense.Offer> offers(String beginning, Bench bench) {
        Kinds kinds = bench.kinds();
        return kinds.beginning(beginning).stream()
                .map(kind -> Sense.Offer.of(
                        kind.toString(), kind.group().isEmpty() ? "" : kinds.groupName(kind), Sense.Rank.WORD))
                .toList();
    }
}
