// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;
import sillbook.model.Thermometer.IceTest;
import sillbook.text.Fold;
import sillbook.words.Heard;
import sillbook.words.Temperatures;

/** {@code thermometer cellar reads 0.6 in ice, lies on the middle shelf}: what is known of the thermometer of a place. */
final class ThermometerForm implements Form {
    private static final Slot<Temperature> ICE = Slot.one("", Senses.longest((words, bench) -> ice(words)));
    private static final Slot<String> LIES = Slot.one("", Senses.phraseAfter("lies", "hangs"));

    /** What melting ice can hide: one that is further off is broken. */
    private static final int MOST_OFF_MILLI = 5_000;

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "thermometer",
                "A place, reads and what its thermometer read in ice water, in ice; the day that was tried, if not today; lies and where in the "
                        + "place it lies. What it reads wrong is put right in all that is worked out.",
                "thermometer cellar reads 0.6 in ice, lies on the middle shelf",
                "thermometer trench reads -0.4 in ice, 2 jan");
    }

    @Override
    public List<String> keywords() {
        return List.of("thermometer");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.PLACE, ICE, LIES, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.PLACE) ? 0 : 1) + (filled.has(ICE) || filled.has(LIES) ? 0 : 1);
    }

    private static Optional<Heard<Temperature>> ice(String words) {
        String said = Fold.of(words);
        int end = said.indexOf(" in ice");
        boolean led = said.startsWith("reads ") && end > "reads ".length();
        boolean ends = said.endsWith(" in ice") || said.endsWith(" in ice water");
        return led && ends
                ? Optional.of(Temperatures.parse(words.substring("reads ".length(), end)))
                : Optional.empty();
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        filled.get(Slots.PLACE)
                .ifPresentOrElse(
                        place -> at(place, filled, draft),
                        () -> draft.ask(
                                "which place?",
                                "Where is it? Write the place, as: thermometer cellar reads 0.6 in ice."));
    }

    private static void at(Place place, Filled filled, Draft draft) {
        Optional<Thermometer> there = draft.bench().journal().thermometerAt(place.id());
        Lines.written("thermometer", "of the " + place.name(), there.isEmpty(), draft);
        Optional<IceTest> ice = filled.get(ICE).map(read -> new IceTest(read, Slots.day(filled, draft.bench())));
        ice.ifPresent(test -> tried(test, filled, draft));
        filled.get(LIES).ifPresent(lies -> draft.means("lies " + lies));
        if (ice.isEmpty() && !filled.has(LIES)) {
            draft.ask(
                    "what of it?",
                    "What of it? Write what it read in ice water, or where it lies, as: reads 0.6 in ice.");
        }
        draft.change(new WriteDown(new Thermometer(
                there.map(Thermometer::id).orElseGet(() -> draft.bench().ids().next()),
                place.id(),
                filled.get(LIES).or(() -> there.map(Thermometer::lies)).orElse(""),
                ice.or(() -> there.flatMap(Thermometer::ice)))));
    }

    private static void tried(IceTest test, Filled filled, Draft draft) {
        TemperatureUnit unit = draft.bench().journal().settings().temperatures();
        int off = test.read().milli();
        draft.means("reads " + Temperatures.say(test.read(), unit) + " in ice water");
        draft.means(off == 0 ? "reads right" : "put right by " + Temperatures.difference(-off, unit));
        Lines.happened("tried", filled, draft);
        if (Math.abs(off) > MOST_OFF_MILLI) {
            draft.ask(
                    "too far off",
                    "Ice water is at 0 C; a thermometer that is off by more than 5 C is broken. Try it again, or take another.");
        } else if (test.on().earliest().isAfter(draft.bench().today())) {
            draft.ask("still to come", "That day is still to come. Write the day it was tried, up to today.");
        }
    }
}
