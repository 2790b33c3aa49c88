// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.change.Change;
import sillbook.change.PotUp;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Variety;
import sillbook.text.Fold;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.Terms;

/** {@code 6 x Marrow Lane x5, 19 cm, fridge, 14 oct}: pots are made, all alike. */
final class PotUpForm implements Form {
    private static final Slot<Integer> POTS = Slot.one(
            "number of pots",
            Senses.matching(
                    "(\\d{1,4}) ?x|(\\d{1,4}) pots?(?: of)?", said -> Heard.as(said.number(said.has(1) ? 1 : 2))));
    private static final Slot<Integer> BULBS = Slot.many(
            "number of bulbs",
            Senses.matching(
                    "x ?(\\d{1,4})|(\\d{1,4}) (?:bulbs?|in each|each)",
                    said -> Heard.as(said.number(said.has(1) ? 1 : 2))));
    private static final Slot<Pot.Way> WAY = Slot.one("", Senses.oneOf(Terms.WAYS));
    private static final Slot<String> LABEL = Slot.one("", Senses.phraseAfter("label", "labels", "as"));
    private static final Slot<Boolean> WAITING =
            Slot.one("", Senses.flag("waiting|to pot|to be potted|not potted(?: yet)?"));
    private static final Slot<Pot> PARENT = Slot.one("", Senses.longest(PotUpForm::parent));

    private static final Pattern FROM = Pattern.compile("from ([a-z]{1,3}\\d{1,4})");

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "pot up",
                "How many pots, the variety and the bulbs in each; then size, container, potting mix, what lies over "
                        + "the holes, how deep, topping, or your usual way; place, day, label and note, as far as you like. A new "
                        + "variety has its kind in brackets, a new place its sort, a new usual way the word new.",
                "6 x Marrow Lane x5, 19 cm, fridge, 14 oct",
                "Marrow Lane (tulip triumph) x5, bowl 19 cm, today",
                "Linen Parade x7, Inkwell x1, pebbles, waiting",
                "6 x Marrow Lane x5, way kitchen pans, cellar",
                "6 x Marrow Lane x5, 15 cm, mesh, tips level, way shallow ones (new)");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(
                POTS,
                Slots.ANY_VARIETIES,
                Slots.ANY_PLACE,
                Slots.DAY,
                BULBS,
                Slots.CONTAINER,
                Slots.LENGTH,
                WAY,
                Slots.MIX,
                PottingFacts.HOLES,
                PottingFacts.DEPTH,
                PottingFacts.TOPPING,
                PottingFacts.WAY,
                LABEL,
                WAITING,
                PARENT,
                Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.ANY_VARIETIES) ? 0 : 1) + (filled.has(BULBS) ? 0 : 1);
    }

    /** {@code from A1}: the last pot of that label in an earlier season. */
    private static Optional<Heard<Pot>> parent(String words, Bench bench) {
        return Groups.of(FROM, Fold.of(words))
                .map(said -> bench.journal().pots().all().stream()
                        .filter(pot -> pot.label().equalsIgnoreCase(said.text(1)))
                        .filter(pot -> pot.season().compareTo(bench.season()) < 0)
                        .max(Comparator.comparing(Pot::season))
                        .map(Heard::as)
                        .orElseGet(() -> Heard.not(
                                "no such pot",
                                "No earlier season has a pot " + said.text(1).toUpperCase(Locale.ROOT) + ".")));
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Optional<Day> potted = filled.has(WAITING) ? Optional.empty() : Optional.of(Slots.day(filled, draft.bench()));
        NewPots pots = new NewPots(
                filled.get(POTS).orElse(1), plantings(filled), filled.get(LABEL).orElse(""), potted, draft.bench());
        pots.say(draft);
        if (filled.has(WAITING)) {
            draft.means("waiting to be potted");
        } else {
            Lines.happened("potted", filled, draft);
        }
        sayHow(filled, draft);
        filled.get(Slots.ANY_PLACE)
                .filter(place -> potted.isPresent())
                .ifPresent(place -> sayWhere(place, pots.howMany(), filled, draft));
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
        new DayInName(filled).remark(Slots.ANY_VARIETIES, draft);
        if (pots.isComplete()) {
            pots.sayStock(draft);
            draft.change(change(pots, filled));
        }
    }

    /** Each variety with the number named after it; a lone one with the number wherever it stands. */
    private static List<NewPots.Planting> plantings(Filled filled) {
        List<Filled.Filling<Named<Variety>>> named = filled.fillings(Slots.ANY_VARIETIES);
        List<NewPots.Planting> plantings = new ArrayList<>();
        for (int i = 0; i < named.size(); i++) {
            int from = i == 0 ? 0 : named.get(i).from();
            int end = i + 1 < named.size() ? named.get(i + 1).from() : Integer.MAX_VALUE;
            Optional<Integer> bulbs = filled.between(BULBS, from, end).stream().findFirst();
            named.get(i)
                    .found()
                    .meaning()
                    .value()
                    .ifPresent(variety -> plantings.add(new NewPots.Planting(variety, bulbs)));
        }
        return plantings;
    }

    private static void sayHow(Filled filled, Draft draft) {
        new PottingFacts(filled).say(draft);
        filled.get(WAY).ifPresent(way -> draft.means("grown in: " + Terms.WAYS.say(way)));
        filled.get(PARENT)
                .ifPresent(parent -> draft.means("the plant of " + parent.label() + ", season "
                        + draft.bench().journal().nameOf(parent.season())));
    }

    private static void sayWhere(Named<Place> place, int howMany, Filled filled, Draft draft) {
        String says = "in the " + place.thing().name() + Lines.made(place) + Lines.ifTaken(Slots.ANY_PLACE, filled);
        Lines.in(place.thing(), says, howMany, draft);
    }

    private static Change change(NewPots pots, Filled filled) {
        Optional<Named<Place>> place = filled.get(Slots.ANY_PLACE);
        List<Change> changes = new ArrayList<>();
        place.filter(Named::isNew).ifPresent(made -> changes.add(new WriteDown(made.thing())));
        pots.newVarieties().forEach(made -> changes.add(new WriteDown(made)));
        PottingFacts potting = new PottingFacts(filled);
        potting.made().ifPresent(made -> changes.add(new WriteDown(made)));
        Optional<Container> container =
                potting.container().flatMap(pots.bench().journal().containers()::find);
        changes.add(new PotUp(
                pots.season(),
                pots.made(),
                pots.howMany(),
                pots.firstLabel(),
                filled.get(WAY).orElse(usualWay(container)),
                potting.container(),
                potting.across(),
                potting.mix(),
                potting.over(Potting.NOT_SAID),
                pots.potted(),
                place.filter(there -> pots.potted().isPresent())
                        .map(there -> there.thing().id()),
                filled.get(PARENT).map(Pot::id),
                filled.get(Slots.NOTE).orElse("")));
        return changes.size() == 1 ? changes.get(0) : new Together("", changes);
    }

    private static Pot.Way usualWay(Optional<Container> container) {
        return container
                .filter(one -> one.shape() == Container.Shape.GLASS)
                .map(glass -> Pot.Way.GLASS)
                .orElse(Pot.Way.DRAINED);
    }
}
