// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.change.CareFor;
import sillbook.change.Change;
import sillbook.change.TendGround;
import sillbook.change.Together;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.Pot;
import sillbook.words.Terms;

/** {@code T4 fed, turned}: something done to pots. */
final class CareForm implements Form {
    private static final Set<Care> OF_GROUND = EnumSet.of(Care.DUG, Care.COVERED);
    private static final Slot<Care> CARE = Slot.many("care", Senses.oneOf(Terms.CARES));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "care",
                "Pots, and what was done: watered, topped up, water changed, tipped out, spirit in the water, fed, "
                        + "turned, staked, hooded, unhooded, repotted, planted out, into outer pot, leaves cut, outdoors, "
                        + "brought in, rested, woken, "
                        + "lifted (a test pot, to look at it); several at once with commas. Of a trench: dug, covered.",
                "T4 fed",
                "A1 watered, turned",
                "trench dug, 3 oct");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, CARE, Slots.PLACE, Slots.DAY);
    }

    /** Nothing but watered is left to a check: who waters has looked. */
    @Override
    public int wanting(Filled filled) {
        boolean saysCare = filled.all(CARE).stream().anyMatch(care -> care != Care.WATERED);
        boolean isOfGround =
                filled.has(Slots.PLACE) && filled.all(CARE).stream().anyMatch(OF_GROUND::contains);
        return (filled.has(Slots.POTS) || isOfGround ? 0 : 1) + (saysCare ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Optional<Care> ofGround =
                filled.all(CARE).stream().filter(OF_GROUND::contains).findFirst();
        ofGround.ifPresentOrElse(care -> drawGround(care, filled, draft), () -> drawPots(filled, draft));
    }

    /** A trench is dug, or covered. */
    private static void drawGround(Care care, Filled filled, Draft draft) {
        filled.get(Slots.PLACE)
                .ifPresentOrElse(
                        place -> {
                            draft.means("the " + place.name());
                            Lines.happened(Terms.CARES.say(care), filled, draft);
                            draft.change(new TendGround(place.id(), care, Slots.day(filled, draft.bench())));
                        },
                        () -> draft.ask(
                                "which place?",
                                "Which place was " + Terms.CARES.say(care) + "? Write its name, as: trench dug."));
    }

    private static void drawPots(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        Lines.pots(pots, draft);
        List<Care> cares = filled.all(CARE).stream().distinct().toList();
        List<String> said = cares.stream().map(Terms.CARES::say).toList();
        Lines.happened(String.join(", ", said), filled, draft);
        if (cares.contains(Care.SPIRIT_IN_WATER)) {
            SpiritGiven.say(pots, draft);
        }
        Day day = Slots.day(filled, draft.bench());
        List<Change> changes = cares.stream()
                .<Change>map(care -> new CareFor(Lines.ids(pots), care, day))
                .toList();
        if (changes.size() == 1) {
            draft.change(changes.get(0));
        } else if (!changes.isEmpty()) {
            draft.change(new Together(Lines.labels(pots) + " " + String.join(", ", said), changes));
        }
    }
}
