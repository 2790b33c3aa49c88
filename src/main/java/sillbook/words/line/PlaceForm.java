// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.words.PlaceTerms;
import sillbook.words.Terms;

/** {@code place stair window, cool room, room 4, 10 to 15 C}: a place is written down, or one there is corrected. */
final class PlaceForm implements Form {
    private static final List<Slot<?>> SLOTS =
            Stream.concat(SpaceFacts.SLOTS.stream(), PlaceFacts.SLOTS.stream()).toList();

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "place",
                "A name and what it is: fridge, cellar, crawl space, cold frame, trench, garage, porch, cool room, warm sill; then room, or its "
                        + "shelf as 60 x 40 cm and how much is clear above it, the days it is there, usual temperatures, the days it is cold, check every so many days or never checked, bridges and how far apart readings are joined, hazards (food, "
                        + "fruit, frost, mice, pets, children, fumes, rotting bulbs, cold back wall, door ajar, unheated room; no hazard strikes them out), light, "
                        + "note. Of a place that is there only what is written changes; called gives it another name.",
                "place stair window, cool room, room 4, 10 to 15 C",
                "place trench, cold 15 oct to 1 apr, check every 10, hazard frost, mice",
                "place cold frame, shelf 120 x 60 cm, 40 cm clear, there 1 oct to 1 may");
    }

    @Override
    public List<String> keywords() {
        return List.of("place");
    }

    @Override
    public List<Slot<?>> slots() {
        return SLOTS;
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.NAME) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(Slots.NAME)
                .ifPresentOrElse(
                        name -> named(name, filled, draft),
                        () -> draft.ask(
                                "which name?",
                                "What is the place called? Write its name, then what it is, as: stair window, cool room."));
    }

    private static void named(String name, Filled filled, Draft draft) {
        Optional<Place> there = new Names<>(draft.bench().journal().places().all(), Place::name)
                .whole(name).stream().findFirst();
        Optional<Sort> sort = filled.get(PlaceFacts.SORT).or(() -> sortInName(name, filled));
        there.or(() -> sort.map(known -> Place.of(draft.bench().ids().next(), name, known)))
                .ifPresentOrElse(place -> write(place, there.isEmpty(), filled, draft), () -> ask(name, draft));
    }

    private static void write(Place before, boolean isNew, Filled filled, Draft draft) {
        Lines.written("place", before.name(), isNew, draft);
        PlaceFacts facts = new PlaceFacts(filled);
        Place place = facts.over(before);
        if (isNew) {
            String sort = place.sort() == Sort.OTHER ? "" : PlaceTerms.SORTS.say(place.sort()) + ", ";
            draft.means(sort + "for the " + Terms.STAGES.say(place.serves()));
        }
        facts.say(place, draft);
        if (isNew && place.serves() == Stage.COLD && !facts.sayColdDays()) {
            remarkColdDays(place, draft);
        }
        draft.change(new SpaceFacts(filled).with(place, isNew, draft));
    }

    private static void remarkColdDays(Place place, Draft draft) {
        if (place.sort().followsTheWeather()) {
            draft.remark(
                    "cold-all-year",
                    "Taken to be cold enough all year. If the " + place.name()
                            + " is so for part of it only, say which: cold 15 oct to 1 apr.");
        }
    }

    /** What the name itself says it is; where it only says which stage it serves, it is something else. */
    private static Optional<Sort> sortInName(String name, Filled filled) {
        for (String word : name.split(" ", -1)) {
            Optional<Sort> sort = PlaceTerms.SORTS.findWhole(word);
            if (sort.isPresent()) {
                return sort;
            }
        }
        return filled.get(PlaceFacts.SERVES).map((Stage serves) -> Sort.OTHER);
    }

    private static void ask(String name, Draft draft) {
        draft.means("place: " + name);
        draft.ask(
                "what is it?",
                "What is the " + name
                        + "? Write it too: fridge, cellar, crawl space, cold frame, trench, garage, porch, "
                        + "cool room or warm sill.");
    }
}
