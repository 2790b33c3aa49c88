// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Optional;
import java.util.Set;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Potting;
import sillbook.model.Potting.Depth;
import sillbook.model.Potting.Holes;
import sillbook.model.PottingMix;
import sillbook.model.UsualWay;
import sillbook.text.Fold;
import sillbook.words.Lengths;
import sillbook.words.PottingWords;
import sillbook.words.Terms;

/** What a line says of how pots are filled: their container and potting mix, the holes, the depth, the topping. */
record PottingFacts(Filled filled) {
    private static final Set<String> NOTHING = Set.of("none", "nothing");

    static final Slot<Holes> HOLES = Slot.one("", Senses.oneOf(Terms.HOLES));
    static final Slot<Depth> DEPTH = Slot.one("", Senses.oneOf(Terms.DEPTHS));
    static final Slot<String> TOPPING = Slot.one(
            "",
            Senses.phraseAfter("topping", "topped with").map(words -> NOTHING.contains(Fold.of(words)) ? "" : words));

    static final Slot<Named<UsualWay>> WAY = Slot.one("usual way", WaySense.SENSE);

    private Optional<UsualWay> way() {
        return filled.get(WAY).map(Named::thing);
    }

    /** What is named; else the usual way's, unless only a size is written. */
    Optional<Id<Container>> container() {
        return filled.get(Slots.CONTAINER)
                .map(Container::id)
                .or(() -> filled.has(Slots.LENGTH) ? Optional.empty() : way().flatMap(UsualWay::container));
    }

    Optional<Length> across() {
        return filled.get(Slots.LENGTH)
                .or(() -> filled.has(Slots.CONTAINER) ? Optional.empty() : way().flatMap(UsualWay::across));
    }

    Optional<Id<PottingMix>> mix() {
        return filled.get(Slots.MIX).map(PottingMix::id).or(() -> way().flatMap(UsualWay::pottingMix));
    }

    /** What is written put over the usual way, or over what is known already. */
    Potting over(Potting known) {
        Potting before = way().map(UsualWay::potting).orElse(known);
        return new Potting(
                before.usualWay(),
                filled.get(HOLES).orElse(before.holes()),
                filled.get(DEPTH).orElse(before.depth()),
                filled.get(TOPPING).orElse(before.topping()));
    }

    /** A usual way made with the line: it is what the line says of the pots. */
    Optional<UsualWay> made() {
        Potting filling = over(Potting.NOT_SAID);
        return filled.get(WAY)
                .filter(Named::isNew)
                .map(Named::thing)
                .map(bare -> new UsualWay(
                        bare.id(),
                        bare.name(),
                        container(),
                        across(),
                        mix(),
                        filling.holes(),
                        filling.depth(),
                        filling.topping(),
                        ""));
    }

    /** Reads back what is written of it. */
    void say(Draft draft) {
        filled.get(Slots.LENGTH)
                .ifPresent(across -> draft.means("pots of "
                        + Lengths.say(across, draft.bench().journal().settings().lengths())));
        filled.get(Slots.CONTAINER).ifPresent(container -> draft.means("in " + container.name()));
        filled.get(Slots.MIX).ifPresent(mix -> draft.means("potting mix: " + mix.name()));
        sayFilling(draft);
    }

    /** The same, leaving container and potting mix aside. */
    void sayFilling(Draft draft) {
        filled.get(HOLES).ifPresent(holes -> draft.means(Terms.HOLES.say(holes)));
        filled.get(DEPTH).ifPresent(depth -> draft.means(Terms.DEPTHS.say(depth)));
        filled.get(TOPPING)
                .ifPresent(topping -> draft.means(topping.isEmpty() ? "nothing on top" : topping + " on top"));
        PottingWords words = new PottingWords(draft.bench().journal());
        made().ifPresentOrElse(
                        made -> draft.means("kept as a new usual way, " + made.name() + ": " + words.say(made)),
                        () -> way().ifPresent(way -> draft.means("usual way " + way.name() + ": " + words.say(way))));
    }
}
