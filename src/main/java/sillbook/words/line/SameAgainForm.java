// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.PotUp;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;

/** {@code same again T4 x3 today}: pots like one that is there. */
final class SameAgainForm implements Form {
    private static final Slot<Integer> POTS = Slot.one("number of pots", Senses.number("x ?(\\d{1,3})"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "same again", "A pot, how many like it, the day, the place if another.", "same again T4 x3 today");
    }

    @Override
    public List<String> keywords() {
        return List.of("same again", "again");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, POTS, Slots.PLACE, Slots.DAY, Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.POTS) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> models = Slots.pots(filled);
        if (models.size() == 1) {
            again(models.get(0), filled, draft);
        } else {
            draft.ask("like which pot?", "Like which pot? Name one by its label, as: same again T4 x3.");
        }
    }

    private static void again(Pot model, Filled filled, Draft draft) {
        List<NewPots.Planting> plantings = model.plantings().stream()
                .map(planting -> new NewPots.Planting(
                        new Named<>(draft.bench().journal().varieties().get(planting.variety()), false),
                        Optional.of(planting.count())))
                .toList();
        NewPots pots = new NewPots(
                filled.get(POTS).orElse(1),
                plantings,
                "",
                Optional.of(Slots.day(filled, draft.bench())),
                draft.bench());
        Optional<Place> place = filled.get(Slots.PLACE).or(() -> firstPlace(model, draft.bench()));
        pots.say(draft);
        draft.means("like " + model.label());
        Lines.happened("potted", filled, draft);
        place.ifPresent(there -> Lines.in(there, "in the " + there.name(), pots.howMany(), draft));
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
        pots.sayStock(draft);
        draft.change(new PotUp(
                pots.season(),
                pots.made(),
                pots.howMany(),
                pots.firstLabel(),
                model.way(),
                model.container(),
                model.across(),
                model.pottingMix(),
                model.potting(),
                pots.potted(),
                place.map(Place::id),
                Optional.empty(),
                filled.get(Slots.NOTE).orElse("")));
    }

    /** Where the model was put first. */
    private static Optional<Place> firstPlace(Pot model, Bench bench) {
        return bench.journal().history(model.id()).stream()
                .filter(event -> event.what() instanceof Happening.Moved)
                .map(event -> ((Happening.Moved) event.what()).place())
                .findFirst()
                .flatMap((Id<Place> id) -> bench.journal().places().find(id));
    }
}
