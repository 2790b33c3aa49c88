// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Terms;

/** {@code pot T4, x6, 19 cm}: what is known of pots beside their history is corrected. */
final class PotFactsForm implements Form {
    private static final Slot<Integer> BULBS = Slot.one(
            "number of bulbs",
            Senses.matching("x ?(\\d{1,4})|(\\d{1,4}) bulbs?", said -> bulbs(said.number(said.has(1) ? 1 : 2))));
    private static final Slot<Pot.Way> WAY = Slot.one("", Senses.oneOf(Terms.WAYS));
    private static final Slot<String> LABEL = Slot.one("", Senses.phraseAfter("label"));

    private static Heard<Integer> bulbs(int count) {
        return count > 0
                ? Heard.as(count)
                : Heard.not(
                        "at least 1",
                        "A pot holds at least one bulb. To take a pot out of the book write remove and its label.");
    }

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "pot's own facts",
                "Pots, and what is right of them: bulbs as x6, variety, size, container, potting mix, way of growing, what lies over the holes, "
                        + "how deep, topping, usual way, label, note.",
                "pot T4, x6, 19 cm",
                "pot T4, label T40");
    }

    @Override
    public List<String> keywords() {
        return List.of("pot", "pots");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(
                Slots.POTS,
                BULBS,
                LABEL,
                Slots.VARIETY,
                Slots.CONTAINER,
                Slots.LENGTH,
                WAY,
                Slots.MIX,
                PottingFacts.HOLES,
                PottingFacts.DEPTH,
                PottingFacts.TOPPING,
                PottingFacts.WAY,
                Slots.NOTE);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.POTS) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        List<Pot> pots = Slots.pots(filled);
        Lines.pots(pots, draft);
        say(filled, draft);
        if (slots().stream().filter(filled::has).count() < 2) {
            draft.ask(
                    "what is right?",
                    "What is right of " + Lines.labels(pots) + "? Write it, as x6, 19 cm or label T40.");
        }
        if (filled.has(LABEL) && pots.size() > 1) {
            draft.ask("one pot only", "A label is for one pot. Name only one.");
        }
        List<Change> changes = new ArrayList<>();
        new PottingFacts(filled).made().ifPresent(made -> changes.add(new WriteDown(made)));
        for (Pot pot : pots) {
            if (pot.isMixed() && (filled.has(BULBS) || filled.has(Slots.VARIETY))) {
                draft.ask("a mixed pot", pot.label() + " holds more than one variety. Remove it and write it anew.");
            }
            changes.add(new WriteDown(over(pot, filled)));
        }
        if (!pots.isEmpty()) {
            draft.change(
                    changes.size() == 1 ? changes.get(0) : new Together(Lines.labels(pots) + " corrected", changes));
        }
    }

    private static Pot over(Pot pot, Filled filled) {
        PottingFacts potting = new PottingFacts(filled);
        return new Pot(
                pot.id(),
                pot.season(),
                filled.get(LABEL).map(PotLabels::tidy).orElse(pot.label()),
                pot.isMixed() ? pot.plantings() : List.of(planting(pot.first(), filled)),
                filled.get(WAY).orElse(pot.way()),
                potting.container().or(pot::container),
                potting.across().or(pot::across),
                potting.mix().or(pot::pottingMix),
                potting.over(pot.potting()),
                pot.batch(),
                pot.parent(),
                filled.get(Slots.NOTE).orElse(pot.note()));
    }

    /** Bulbs of another variety cannot be from the same purchase. */
    private static Pot.Planting planting(Pot.Planting before, Filled filled) {
        Optional<Variety> variety =
                filled.get(Slots.VARIETY).filter(other -> !other.id().equals(before.variety()));
        return new Pot.Planting(
                variety.map(Variety::id).orElse(before.variety()),
                filled.get(BULBS).orElse(before.count()),
                variety.isPresent() ? Optional.empty() : before.purchase());
    }

    private static void say(Filled filled, Draft draft) {
        filled.get(LABEL).ifPresent(label -> draft.means("label " + PotLabels.tidy(label)));
        filled.get(Slots.VARIETY).ifPresent(variety -> draft.means("variety: " + Lines.quoted(variety.name())));
        filled.get(BULBS).ifPresent(bulbs -> draft.means(bulbs + " in it"));
        filled.get(Slots.LENGTH)
                .ifPresent(across -> draft.means(
                        Lengths.say(across, draft.bench().journal().settings().lengths()) + " across"));
        filled.get(Slots.CONTAINER).ifPresent(container -> draft.means("in " + container.name()));
        filled.get(WAY).ifPresent(way -> draft.means("grown in: " + Terms.WAYS.say(way)));
        filled.get(Slots.MIX).ifPresent(mix -> draft.means("potting mix: " + mix.name()));
        new PottingFacts(filled).sayFilling(draft);
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
    }
}
