// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.Flower;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.words.Terms;

/** {@code T4 first flower}: pots come to a point of their bloom. */
final class FlowerForm implements Form {
    private static final Slot<BloomPoint> POINT = Slot.one("point of bloom", Senses.oneOf(Terms.BLOOM_POINTS));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "bloom",
                "Pots, and first flower, full bloom or past bloom; of a mixed pot the variety may be named.",
                "T4 first flower",
                "T4 past bloom, 9 jan");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, POINT, Slots.VARIETY, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.POTS) ? 0 : 1) + (filled.has(POINT) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        Lines.pots(pots, draft);
        Optional<Id<Variety>> variety = filled.get(Slots.VARIETY).map(Variety::id);
        filled.get(Slots.VARIETY).ifPresent(one -> {
            draft.means("only " + Lines.quoted(one.name()));
            Lines.holding(one, pots, draft);
        });
        filled.get(POINT).ifPresent(point -> {
            Lines.happened(Terms.BLOOM_POINTS.say(point), filled, draft);
            draft.change(new Flower(Lines.ids(pots), point, variety, Slots.day(filled, draft.bench())));
        });
    }
}
