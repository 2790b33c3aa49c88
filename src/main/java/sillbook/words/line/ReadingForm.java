// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Band;
import sillbook.model.Day;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.SpanReading;
import sillbook.text.Fold;
import sillbook.words.Days;
import sillbook.words.Heard;
import sillbook.words.Looking;
import sillbook.words.Temperatures;

/** {@code cellar 3 to 8}: the lowest and highest of a place since its thermometer was last reset. */
final class ReadingForm implements Form {
    private static final Slot<Band> BETWEEN =
            Slot.one("", Senses.longest((words, bench) -> Temperatures.tryParseBand(words)));
    private static final Slot<Day> SINCE = Slot.one("", Senses.longest(ReadingForm::since));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "reading",
                "A place, the lowest and highest since the thermometer was last reset; since and the day of the reset, if the book "
                        + "does not know it; the day it was read, if not today.",
                "cellar 3 to 8",
                "trench -1 to 4 C, since 2 jan");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.PLACE, BETWEEN, SINCE, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.PLACE) ? 0 : 1) + (filled.has(BETWEEN) ? 0 : 1);
    }

    private static Optional<Heard<Day>> since(String words, Bench bench) {
        return Fold.of(words).startsWith("since ")
                ? bench.days(Looking.BACK).tryParse(words.substring("since ".length()))
                : Optional.empty();
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Optional<Place> place = filled.get(Slots.PLACE);
        Optional<Band> between = filled.get(BETWEEN);
        if (place.isEmpty()) {
            draft.ask("which place?", "At which place? Write its name first, as: cellar 3 to 8.");
        }
        if (between.isEmpty()) {
            draft.ask("which temperatures?", "Which were the lowest and the highest? Write them as 3 to 8.");
        }
        place.ifPresent(there -> between.ifPresent(band -> read(there, band, filled, draft)));
    }

    private static void read(Place place, Band band, Filled filled, Draft draft) {
        draft.means("the " + place.name() + ": "
                + fromTo(band, draft.bench().journal().settings().temperatures()));
        Lines.happened("read", filled, draft);
        Day to = Slots.day(filled, draft.bench());
        Optional<Day> from = filled.get(SINCE).or(() -> lastReset(place, to, draft.bench()));
        from.ifPresent(day -> draft.means("since " + Days.full(day)));
        if (from.isEmpty()) {
            draft.ask("since when?", "Since when? Write the day the thermometer was last reset, as: since 2 jan.");
        } else if (from.get().likely().isAfter(to.likely())) {
            draft.ask(
                    "reset after reading",
                    "It was reset after it was read. Write the day of the reset before that of the reading.");
        } else if (to.earliest().isAfter(draft.bench().today())) {
            draft.ask("still to come", Days.full(to) + " is still to come. Write a day up to today.");
        } else {
            draft.change(new WriteDown(new SpanReading(draft.bench().ids().next(), place.id(), from.get(), to, band)));
        }
    }

    private static String fromTo(Band band, TemperatureUnit unit) {
        boolean isOne = band.low().milli() == band.high().milli();
        return (isOne ? "always " : "from ") + Temperatures.fromTo(band, unit);
    }

    /** The day of the last reading before: a thermometer is reset when it is read. */
    private static Optional<Day> lastReset(Place place, Day before, Bench bench) {
        return bench.journal().spanReadingsAt(place.id()).stream()
                .map(SpanReading::to)
                .filter(day -> !day.likely().isAfter(before.likely()))
                .max(Comparator.naturalOrder());
    }
}
