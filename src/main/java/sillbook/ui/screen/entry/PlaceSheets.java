// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Edit;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Space;
import sillbook.ui.screen.form.Answers;
import sillbook.words.ColdDayWords;
import sillbook.words.Lengths;
import sillbook.words.PlaceTerms;
import sillbook.words.Spells;
import sillbook.words.Temperatures;
import sillbook.words.Terms;

/** Forms of places. */
final class PlaceSheets {
    private static final Part NAME = Part.of("Name", 30, "", "What you call it: garage fridge, stair window.")
            .following()
            .wanted()
            .phrase();
    private static final Part RENAMED =
            Part.of("Name", 30, "called ", "What you call it.").phrase();
    private static final Part SORT = Part.of(
                    "What it is",
                    20,
                    "",
                    "Fridge, cellar, crawl space, cold frame, trench, garage, porch, cool room or warm sill.")
            .wanted();
    private static final Part SERVES = Part.of(
            "Serves as", 16, "serves ", "Cold, cool room or warm room; left empty, what is usual for such a place.");
    private static final Part ROOM = Part.of("Room", 6, "room ", "How many pots find room.");
    private static final Part USUAL = Part.of("Usually", 16, "", "Its usual temperatures: 2 to 9 C, 36 to 48 F.");
    private static final Part COLD = Part.of("Cold", 24, "cold ", "The days it is cold: 15 oct to 1 apr, or all year.");
    private static final Part CHECK =
            Part.of("Checks", 8, "check every ", "Days from one round to the next; 0 never asks.");
    private static final Part BRIDGES = Part.of(
            "Bridges",
            12,
            "bridges ",
            "Readings so far apart are joined: 10 days, half a day; what is longer is a gap.");
    private static final Part HAZARDS = Part.of(
            "Hazards",
            30,
            "hazard ",
            "Food, fruit, rotting bulbs, frost, mice, pets, children, fumes, cold back wall, door ajar, unheated room.");
    private static final Part LIGHT =
            Part.of("Light", 24, "light ", "In your own words.").phrase();
    private static final Part SHELF =
            Part.of("Shelf", 16, "shelf ", "Width and depth of what pots stand on, as 60 x 40 cm: how many fit.");
    private static final Part CLEAR = Part.of("Clear", 10, "", "How high it is clear above the shelf: 40 cm.")
            .with(" clear");
    private static final Part THERE =
            Part.of("There", 24, "there ", "The days it is there for pots: 1 oct to 1 may, or all year.");
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private PlaceSheets() {}

    static LineSheet fresh() {
        return LineSheet.of(
                "New place",
                "new place",
                "place",
                List.of(
                        NAME, SORT, SERVES, ROOM, USUAL, COLD, CHECK, BRIDGES, HAZARDS, LIGHT, SHELF, CLEAR, THERE,
                        NOTE));
    }

    static LineSheet correct(Place place, Optional<Space> space, Settings settings) {
        TemperatureUnit unit = settings.temperatures();
        Answers now = spaced(space, settings.lengths())
                .with(RENAMED.blank(), place.name())
                .with(SORT.blank(), place.sort() == Place.Sort.OTHER ? "" : PlaceTerms.SORTS.say(place.sort()))
                .with(SERVES.blank(), Terms.STAGES.say(place.serves()))
                .with(ROOM.blank(), place.room().map(String::valueOf).orElse(""))
                .with(
                        USUAL.blank(),
                        place.usual()
                                .map(band -> Temperatures.fromTo(band, unit))
                                .orElse(""))
                .with(COLD.blank(), place.coldDays().isAllYear() ? "" : ColdDayWords.say(place.coldDays()))
                .with(CHECK.blank(), Integer.toString(place.checkEveryDays()))
                .with(BRIDGES.blank(), Spells.say(place.bridges()))
                .with(HAZARDS.blank(), hazards(place))
                .with(LIGHT.blank(), place.light())
                .with(NOTE.blank(), place.note());
        return LineSheet.of(
                        "Correct " + place.name(),
                        "correct " + place.name(),
                        "place '" + place.name() + "'",
                        List.of(
                                RENAMED, SORT, SERVES, ROOM, USUAL, COLD, CHECK, BRIDGES, HAZARDS, LIGHT, SHELF, CLEAR,
                                THERE, NOTE))
                .filled(now)
                .over(new Edit.Put(Place.of(place.id(), place.name(), place.sort())));
    }

    /** What is known of its shelf stands there as it is; a blank that is emptied leaves it. */
    private static Answers spaced(Optional<Space> space, LengthUnit unit) {
        String shelf = space.flatMap(Space::shelf)
                .map(surface -> Lengths.number(surface.width(), unit) + " x " + Lengths.say(surface.depth(), unit))
                .orElse("");
        String clear =
                space.flatMap(Space::clear).map(high -> Lengths.say(high, unit)).orElse("");
        String there = space.map(Space::there)
                .filter(days -> !days.isAllYear())
                .map(ColdDayWords::say)
                .orElse("");
        return Answers.NONE
                .with(SHELF.blank(), shelf)
                .with(CLEAR.blank(), clear)
                .with(THERE.blank(), there);
    }

    private static String hazards(Place place) {
        return place.hazards().stream().sorted().map(PlaceTerms.HAZARDS::say).collect(Collectors.joining(", "));
    }
}
