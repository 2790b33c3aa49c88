// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Trench;
import sillbook.model.Trench.Air;
import sillbook.model.Trench.Cover;
import sillbook.model.Trench.Means;
import sillbook.model.Trench.Read;
import sillbook.model.Trench.Soil;
import sillbook.words.Covers;
import sillbook.words.GroundTerms;
import sillbook.words.GroundWords;
import sillbook.words.Heard;
import sillbook.words.Lengths;

/** {@code ground trench, 25 cm deep, straw 10 cm, means -2 -1 3 8 13 17 19 18 14 9 3 -1}: how pots stand buried at a place. */
final class GroundForm implements Form {
    private static final double FAHRENHEIT = 1.8;
    private static final double MOST_SPREAD = 20;
    private static final Slot<Length> DEPTH = Slot.one(
            "depth",
            Senses.any(List.of(
                    Senses.longest((words, bench) -> words.endsWith(" deep")
                            ? deep(words.substring(0, words.length() - " deep".length()))
                            : Optional.empty()),
                    Senses.longest((words, bench) ->
                            words.startsWith("depth ") ? deep(words.substring("depth ".length())) : Optional.empty()),
                    Senses.length())));
    private static final Slot<Soil> SOIL = Slot.one("soil", Senses.oneOf(GroundTerms.SOILS));
    private static final Slot<Cover> COVER = Slot.one("cover", Senses.longest((words, bench) -> Covers.parse(words)));
    private static final Slot<Boolean> BARE = Slot.one("", Senses.flag("bare|no cover|no mulch|uncovered"));
    private static final Slot<Means> MONTHS = Slot.one("year of months", MonthsSense.SENSE);
    private static final Slot<Double> SPELLS = Slot.one(
            "spread of spells",
            Senses.matching(
                    "spells (?:of )?(\\d{1,2}(?:[.,]\\d)?) ?(c|f)?",
                    said -> spread(Double.parseDouble(said.text(1).replace(',', '.')), said.text(2))));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "ground",
                "A trench or frame; how deep the pots stand; the soil: garden soil, sand, clay or peat, dry or wet if it is; what "
                        + "covers it: straw, leaves, bark or snow, and how thick, or bare; the means of the months from January on, or air from a "
                        + "place outdoors that is read; spells, how far ten days lie about the year's course. "
                        + "Of ground that is there only what is written changes.",
                "ground trench, 25 cm deep, straw 10 cm, means -2 -1 3 8 13 17 19 18 14 9 3 -1",
                "ground trench, sand, bare, spells 4 C");
    }

    @Override
    public List<String> keywords() {
        return List.of("ground");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.PLACE, COVER, DEPTH, SOIL, BARE, MONTHS, Slots.AIR, SPELLS);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(Slots.PLACE) ? 0 : 1;
    }

    private static Optional<Heard<Length>> deep(String words) {
        return Lengths.parse(words).value().isPresent() ? Optional.of(Lengths.parse(words)) : Optional.empty();
    }

    /** A difference of temperatures, so Fahrenheit is only scaled. */
    private static Heard<Double> spread(double given, String unit) {
        double celsius = unit.equals("f") ? given / FAHRENHEIT : given;
        return celsius > 0 && celsius <= MOST_SPREAD
                ? Heard.as(celsius)
                : Heard.not(
                        "0 to 20 C",
                        "Spells do not lie so far about the year's course. Write some degrees, as: spells 3 C.");
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(Slots.PLACE)
                .ifPresentOrElse(
                        place -> of(place, filled, draft),
                        () -> draft.ask(
                                "which place?", "The ground of which place? Write its name, as: ground trench."));
    }

    private static void of(Place place, Filled filled, Draft draft) {
        Optional<Trench> before = draft.bench().journal().trench(place.id());
        draft.means("the ground of the " + place.name() + (before.isEmpty() ? "" : ", corrected"));
        Optional<Length> depth = filled.get(DEPTH).or(() -> before.map(Trench::depth));
        Optional<Air> air = air(filled).or(() -> before.map(Trench::air));
        if (depth.isEmpty()) {
            draft.ask("how deep?", "How deep do the pots stand? Write the depth of the bulbs, as: 25 cm deep.");
        }
        if (air.isEmpty()) {
            draft.ask(
                    "how cold are the months?",
                    "How cold are the months outdoors? Write twelve means, from January on, after the word means; or air from "
                            + "and a place that is read.");
        }
        depth.ifPresent(deep -> air.ifPresent(over -> write(place, before, deep, over, filled, draft)));
    }

    private static Optional<Air> air(Filled filled) {
        return filled.get(MONTHS)
                .<Air>map(means -> means)
                .or(() -> filled.get(Slots.AIR).map(Place::id).map(Read::new));
    }

    private static void write(Place place, Optional<Trench> before, Length depth, Air air, Filled filled, Draft draft) {
        if (depth.tenths() == 0) {
            draft.ask("deeper than 0", "Pots that are not buried have no ground. Write how deep the bulbs are.");
            return;
        }
        Id<Trench> id =
                before.map(Trench::id).orElseGet(() -> draft.bench().ids().next());
        Trench trench = new Trench(
                id,
                place.id(),
                depth,
                filled.get(SOIL).or(() -> before.map(Trench::soil)).orElse(Soil.GARDEN_SOIL),
                filled.get(COVER).or(() -> filled.has(BARE) ? Optional.empty() : before.flatMap(Trench::cover)),
                air,
                filled.get(SPELLS).or(() -> before.flatMap(Trench::spells)));
        say(trench, draft);
        draft.change(new WriteDown(trench));
    }

    private static void say(Trench trench, Draft draft) {
        Settings settings = draft.bench().journal().settings();
        GroundWords words = new GroundWords(draft.bench().journal());
        draft.means(
                Lengths.say(trench.depth(), settings.lengths()) + " deep in " + GroundTerms.SOILS.say(trench.soil()));
        draft.means(trench.cover()
                .map(cover -> "under " + Covers.say(cover, settings.lengths()))
                .orElse("bare"));
        draft.means(words.air(trench.air()));
        trench.spells().ifPresent(sd -> draft.means("spells " + GroundWords.spread(sd, settings.temperatures())));
    }
}
