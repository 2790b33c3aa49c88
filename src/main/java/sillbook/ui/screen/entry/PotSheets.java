// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Potting.Depth;
import sillbook.model.Potting.Holes;
import sillbook.ui.screen.form.Answers;
import sillbook.words.Lengths;
import sillbook.words.Terms;

/** Forms of pots. */
final class PotSheets {
    private static final Part HOW_MANY = Part.of("How many", 5, "", "How many such pots; 6 makes a row of six labels.")
            .with(" x");
    private static final Part VARIETY = Part.of(
                    "Variety", 40, "", "Type a few letters. Up Down choose, Tab takes it and goes on.")
            .following()
            .wanted()
            .making();
    private static final Part COUNT = Part.of("Bulbs", 5, "x", "How many bulbs are in each pot.")
            .following()
            .wanted();
    private static final Part CONTAINER =
            Part.of("Container", 24, "", "A container of yours, or its shape and size: bowl 19 cm, 7.5in.");
    private static final Part MIX = Part.of("Potting mix", 24, "", "A potting mix you have written down.");
    private static final Part WAY_OF_FILLING = Part.of(
                    "Usual way",
                    24,
                    "way ",
                    "The usual way you fill pots, by its name; to keep what is written here as one: kitchen pans (new).")
            .making();
    private static final Part FILLED = Part.of(
            "Filled",
            50,
            "",
            "Paper, mesh or crocks over the holes; how deep; topping: mesh, tips level, topping grit.");
    private static final Part PLACE = Part.of(
                    "Place", 24, "", "Where it was put. A new one with its sort: attic (cellar).")
            .making();
    private static final Part POTTED =
            Part.of("Potted", 20, "", "The day it was potted: today, fri, 14 oct. If it still waits: waiting.");
    private static final Part LABEL = Part.of(
                    "Label", 8, "label ", "As you pencil it on the stick; left empty it is the next free one.")
            .phrase();
    private static final Part WAY =
            Part.of("Grown in", 20, "", "Drained pot if nothing is said; else bowl, glass or pebbles.");
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private static final Part SIZE =
            Part.of("Container", 24, "", "A container of yours, or only its inside width: 19 cm, 7.5in.");

    private PotSheets() {}

    static LineSheet fresh() {
        List<Part> line = List.of(
                HOW_MANY, VARIETY, COUNT, WAY_OF_FILLING, CONTAINER, MIX, FILLED, PLACE, POTTED, LABEL, WAY, NOTE);
        return LineSheet.of("New pot", "new pot", "", line)
                .asking(List.of(
                        VARIETY.blank(),
                        COUNT.blank(),
                        CONTAINER.blank(),
                        MIX.blank(),
                        PLACE.blank(),
                        POTTED.blank(),
                        LABEL.blank(),
                        WAY.blank(),
                        WAY_OF_FILLING.blank(),
                        FILLED.blank(),
                        HOW_MANY.blank(),
                        NOTE.blank()))
                .filled(Answers.NONE.with(POTTED.blank(), "today").with(HOW_MANY.blank(), "1"))
                .beforePotting(new PottingCare(VARIETY, List.of(MIX.blank(), FILLED.blank())));
    }

    /** Pots like one that is there. */
    static LineSheet again(Pot model) {
        Part howMany = Part.of("How many", 5, "x", "How many pots like it.").following();
        Part place = Part.of("Place", 24, "", "Where they were put; left empty, where that one was first put.");
        Part day = Part.of("Potted", 20, "", "The day they were potted: today, fri, 14 oct.");
        return LineSheet.of(
                        "Same again as " + model.label(),
                        "same again",
                        "same again " + model.label(),
                        List.of(howMany, place, day, NOTE))
                .filled(Answers.NONE.with(howMany.blank(), "1").with(day.blank(), "today"))
                .beforePotting(new PottingCare(VARIETY, List.of(MIX.blank(), FILLED.blank())));
    }

    /** A pot's own facts; its history is corrected entry by entry. */
    static LineSheet correct(Journal journal, Pot pot) {
        Part count = Part.of("Bulbs", 5, "x", "How many bulbs are in it.");
        Part variety = Part.of("Variety", 40, "", "The variety that is really in it.");
        Answers now = Answers.NONE
                .with(LABEL.blank(), pot.label())
                .with(SIZE.blank(), size(journal, pot))
                .with(MIX.blank(), mix(journal, pot))
                .with(FILLED.blank(), filled(pot.potting()))
                .with(WAY.blank(), Terms.WAYS.say(pot.way()))
                .with(NOTE.blank(), pot.note());
        List<Part> parts = List.of(LABEL, SIZE, MIX, FILLED, WAY, NOTE);
        if (!pot.isMixed()) {
            parts = List.of(variety, count, LABEL, SIZE, MIX, FILLED, WAY, NOTE);
            now = now.with(variety.blank(), "'" + name(journal, pot) + "'")
                    .with(count.blank(), Integer.toString(pot.first().count()));
        }
        return LineSheet.of("Correct " + pot.label(), "correct " + pot.label(), "pot " + pot.label(), parts)
                .filled(now)
                .over(new Edit.Put(bare(pot)));
    }

    private static Pot bare(Pot pot) {
        return new Pot(
                pot.id(),
                pot.season(),
                pot.label(),
                pot.plantings(),
                pot.way(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Potting(pot.potting().usualWay(), Holes.NOT_SAID, Depth.NOT_SAID, ""),
                pot.batch(),
                pot.parent(),
                "");
    }

    /** As the line takes it; words of the grower's with a comma in them stand in quotes. */
    private static String filled(Potting potting) {
        List<String> facts = new ArrayList<>();
        if (potting.holes() != Holes.NOT_SAID) {
            facts.add(Terms.HOLES.say(potting.holes()));
        }
        if (potting.depth() != Depth.NOT_SAID) {
            facts.add(Terms.DEPTHS.say(potting.depth()));
        }
        if (!potting.topping().isEmpty()) {
            facts.add("topping \"" + potting.topping().replace('"', '\'') + '"');
        }
        return String.join(", ", facts);
    }

    private static String name(Journal journal, Pot pot) {
        return journal.varieties().get(pot.first().variety()).name();
    }

    private static String size(Journal journal, Pot pot) {
        return pot.container()
                .map(id -> journal.containers().get(id).name())
                .or(() -> pot.across()
                        .map(across -> Lengths.say(across, journal.settings().lengths())))
                .orElse("");
    }

    private static String mix(Journal journal, Pot pot) {
        return pot.pottingMix().map(id -> journal.pottingMixes().get(id).name()).orElse("");
    }
}
