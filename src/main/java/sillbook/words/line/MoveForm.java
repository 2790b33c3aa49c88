// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.change.Move;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;

/** {@code T1-T6 cool room}: pots are carried to a place, and are in its stage from then on. */
final class MoveForm implements Form {
    private static final Vocabulary<Stage> STAGES =
            Terms.STAGES.only(Set.of(Stage.COLD, Stage.COOL_ROOM, Stage.WARM_ROOM, Stage.IN_BLOOM, Stage.AFTER_BLOOM));
    private static final Slot<Stage> STAGE = Slot.one("stage", Senses.oneOf(STAGES));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "move",
                "Pots, then a place, a stage or both; the day, if it was not today. A stage alone takes a place that serves it. Of "
                        + "many pots move and a number takes so many, those most ready first, then by label.",
                "T1-T6 cool room",
                "T1-T6 move 2 to stair window",
                "T4 stair window, yesterday");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, SomeOf.HOW_MANY, Slots.ANY_PLACE, STAGE, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        int where = filled.has(Slots.ANY_PLACE) || filled.has(STAGE) ? 0 : 1;
        return where + (filled.has(Slots.POTS) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        Optional<Stage> stage = filled.get(STAGE);
        filled.get(Slots.ANY_PLACE)
                .or(() -> stage.flatMap(serving -> draft.bench().suggest(pots, serving))
                        .map(place -> new Named<>(place, false)))
                .ifPresentOrElse(
                        place -> move(pots, place, stage.orElse(place.thing().serves()), filled, draft), () -> {
                            Lines.pots(pots, draft);
                            ask(pots, stage, draft);
                        });
    }

    private static void move(List<Pot> named, Named<Place> place, Stage stage, Filled filled, Draft draft) {
        Id<Place> to = place.thing().id();
        List<Pot> pots =
                SomeOf.of(named, filled, draft, of -> draft.bench().outlook().turnsInto(stage, to, of));
        Lines.pots(pots.isEmpty() ? named : pots, draft);
        Lines.into(place, stage, pots, Lines.ifTaken(Slots.ANY_PLACE, filled), draft);
        Lines.happened("moved", filled, draft);
        Day day = Slots.day(filled, draft.bench());
        draft.change(place.together(new Move(Lines.ids(pots), to, stage, day)));
    }

    private static void ask(List<Pot> pots, Optional<Stage> stage, Draft draft) {
        stage.ifPresentOrElse(
                serving -> draft.ask(
                        "which place?",
                        "No place is known for this stage. Name one, or write a line as: place stair window, "
                                + STAGES.say(serving) + "."),
                () -> draft.ask(
                        "and then?",
                        "What of " + Lines.labels(pots)
                                + "? Write a place or stage, what was seen (moist, roots, 6 cm), or done."));
    }
}
