// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.List;
import java.util.Optional;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Trench;
import sillbook.ui.screen.form.Answers;
import sillbook.words.Covers;
import sillbook.words.GroundTerms;
import sillbook.words.GroundWords;
import sillbook.words.Lengths;

/** The form of the ground in which pots stand buried. */
final class GroundSheets {
    private static final Part DEPTH = Part.of(
                    "How deep", 10, "", "From the surface of the ground to the middle of the bulbs: 25 cm, 10in.")
            .with(" deep")
            .wanted();
    private static final Part SOIL =
            Part.of("Soil", 16, "", "Garden soil, sand, clay or peat; dry or wet before it, if it is so all winter.");
    private static final Part COVER = Part.of(
            "Cover", 24, "", "What lies on it in winter: straw 10 cm, leaves, bark or snow. Empty where it is bare.");
    private static final Part MONTHS = Part.of(
            "Months",
            50,
            "means ",
            "Twelve mean temperatures outdoors, January first: -2 -1 3 8 13 17 19 18 14 9 3 -1.");
    private static final Part AIR = Part.of(
            "Or air at", 24, "air from ", "A place outdoors that has been read for a year, instead of the months.");
    private static final Part SPELLS =
            Part.of("Spells", 8, "spells ", "How far ten days lie about the year's course; empty takes 3 C.");
    private static final List<Part> PARTS = List.of(DEPTH, SOIL, COVER, MONTHS, AIR, SPELLS);

    private GroundSheets() {}

    static LineSheet fresh(Place place) {
        return sheet(place);
    }

    static LineSheet correct(Journal journal, Place place, Trench trench) {
        Settings settings = journal.settings();
        Answers now = Answers.NONE
                .with(DEPTH.blank(), Lengths.say(trench.depth(), settings.lengths()))
                .with(SOIL.blank(), GroundTerms.SOILS.say(trench.soil()))
                .with(
                        COVER.blank(),
                        trench.cover()
                                .map(cover -> Covers.say(cover, settings.lengths()))
                                .orElse(""))
                .with(MONTHS.blank(), GroundWords.months(trench.air(), settings.temperatures()))
                .with(
                        AIR.blank(),
                        trench.outdoors()
                                .map(outdoors -> journal.places().get(outdoors).name())
                                .orElse(""))
                .with(
                        SPELLS.blank(),
                        trench.spells()
                                .map(sd -> GroundWords.spread(sd, settings.temperatures()))
                                .orElse(""));
        return sheet(place).filled(now).over(new Edit.Put(bare(trench)));
    }

    private static LineSheet sheet(Place place) {
        return LineSheet.of(
                "Ground of the " + place.name(), "ground of " + place.name(), "ground '" + place.name() + "'", PARTS);
    }

    /** What cannot be left empty stays. */
    private static Trench bare(Trench trench) {
        return new Trench(
                trench.id(),
                trench.place(),
                trench.depth(),
                Trench.Soil.GARDEN_SOIL,
                Optional.empty(),
                trench.air(),
                Optional.empty());
    }
}
