// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sillbook.change.TakeReading;
import sillbook.model.Day;
import sillbook.model.Place;
import sillbook.model.Temperature;
import sillbook.words.Temperatures;

/** {@code cellar 5 C}: what the thermometer of a place reads. */
final class TakeReadingForm implements Form {
    private static final Slot<Temperature> TEMPERATURE =
            Slot.one("", Senses.longest((words, bench) -> Temperatures.tryParse(words)));
    private static final Slot<LocalTime> TIME = Slot.one("", ClockTime.SENSE);

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "temperature",
                "A place and what its thermometer reads; the time of day and the day it was read, if not now. Of a day without a time noon is meant.",
                "cellar 5 C",
                "trench 41F, 7:30",
                "cellar 4.5, yesterday at 18:00");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.PLACE, TIME, TEMPERATURE, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.PLACE) ? 0 : 1) + (filled.has(TEMPERATURE) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Optional<Place> place = filled.get(Slots.PLACE);
        Optional<Temperature> temperature = filled.get(TEMPERATURE);
        if (place.isEmpty()) {
            draft.ask("which place?", "At which place? Write its name first, as: cellar 5 C.");
        }
        if (temperature.isEmpty()) {
            draft.ask("which temperature?", "What did the thermometer read? Write it as 5 C or 41F.");
        }
        place.ifPresent(there -> temperature.ifPresent(read -> read(there, read, filled, draft)));
    }

    private static void read(Place place, Temperature read, Filled filled, Draft draft) {
        draft.means("the " + place.name() + ": "
                + Temperatures.say(read, draft.bench().journal().settings().temperatures()));
        if (filled.has(Slots.DAY)) {
            Lines.happened("read", filled, draft);
        }
        Optional<LocalDateTime> at = at(filled, draft.bench());
        at.ifPresent(moment -> draft.means(clock(moment.toLocalTime())));
        if (at.isEmpty() && !filled.has(TIME)) {
            draft.means("read now");
        }
        draft.change(new TakeReading(place.id(), read, at));
    }

    /** Empty where neither a day but today nor a time is written. */
    private static Optional<LocalDateTime> at(Filled filled, Bench bench) {
        Day day = Slots.day(filled, bench);
        boolean today = day.likely().equals(bench.today());
        return filled.get(TIME)
                .or(() -> today ? Optional.empty() : Optional.of(LocalTime.NOON))
                .map(day.likely()::atTime);
    }

    private static String clock(LocalTime time) {
        return String.format(Locale.ROOT, "at %d:%02d", time.getHour(), time.getMinute());
    }
}
