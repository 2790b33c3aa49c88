// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import java.util.List;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Outcome;
import sillbook.model.Purchase;
import sillbook.model.ReadingSource;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;
import sillbook.model.Thermometer;
import sillbook.words.DiaryEntry;

/** What sort of entries the diary shows. */
enum EntrySort {
    ALL('a', "all", List.of(Entity.class)),
    MOVES(
            'm',
            "moves",
            List.of(Happening.Potted.class, Happening.Moved.class, Happening.Closed.class, Happening.Displayed.class)),
    CHECKS(
            'c',
            "checks",
            List.of(
                    Happening.Checked.class,
                    SpanReading.class,
                    SpotReading.class,
                    ReadingSource.class,
                    Thermometer.class)),
    BLOOM('b', "bloom and care", List.of(Happening.Flowered.class, Happening.Cared.class)),
    NOTES('j', "notes", List.of(Happening.Jotted.class, Happening.PutOff.class, Happening.LeftOut.class)),
    OUTCOMES('o', "outcomes", List.of(Outcome.class)),
    PURCHASES('t', "purchases", List.of(Purchase.class));

    private final char letter;
    private final String words;

    /** Unmodifiable. */
    @SuppressWarnings("ImmutableEnumChecker") // an immutable list is no type of its own in java.base
    private final List<Class<?>> types;

    EntrySort(char letter, String words, List<Class<?>> types) {
        this.letter = letter;
        this.words = words;
        this.types = types;
    }

    char letter() {
        return letter;
    }

    String words() {
        return words;
    }

    boolean has(DiaryEntry entry) {
        Entity<?> written = entry.written().get(0);
        return types.stream()
                .anyMatch(type ->
                        type.isInstance(written) || (written instanceof Event event && type.isInstance(event.what())));
    }
}
