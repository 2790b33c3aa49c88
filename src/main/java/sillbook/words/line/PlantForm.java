// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Plant;
import sillbook.model.Place;
import sillbook.model.Pot;

/** {@code T4 potted, cellar}: pots that waited for it are potted. */
final class PlantForm implements Form {
    private static final Slot<Boolean> POTTED = Slot.one("", Senses.flag("potted|potted up|planted"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "potted",
                "Pots that wait to be potted, the word potted, the place they were put, the day if not today.",
                "T7-T9 potted, cellar, yesterday");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, POTTED, Slots.ANY_PLACE, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.POTS) ? 0 : 1) + (filled.has(POTTED) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        Optional<Named<Place>> place = filled.get(Slots.ANY_PLACE);
        Lines.pots(pots, draft);
        Lines.happened("potted", filled, draft);
        place.ifPresent(there ->
                Lines.into(there, there.thing().serves(), pots, Lines.ifTaken(Slots.ANY_PLACE, filled), draft));
        BulbsWanted.say(BulbsWanted.by(pots, draft.bench().journal()), draft);
        Change plant =
                new Plant(Lines.ids(pots), place.map(there -> there.thing().id()), Slots.day(filled, draft.bench()));
        draft.change(place.map(there -> there.together(plant)).orElse(plant));
    }
}
