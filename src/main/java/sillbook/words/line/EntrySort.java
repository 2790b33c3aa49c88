// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.function.Predicate;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.words.Vocabulary;

/** The sorts of entry that a line can point at. */
enum EntrySort {
    POTTED(Happening.Potted.class::isInstance),
    MOVED(Happening.Moved.class::isInstance),
    CHECKED(Happening.Checked.class::isInstance),
    FIRST_FLOWER(what -> flowered(what, BloomPoint.FIRST_FLOWER)),
    FULL_BLOOM(what -> flowered(what, BloomPoint.FULL_BLOOM)),
    PAST_BLOOM(what -> flowered(what, BloomPoint.PAST_BLOOM)),
    CARE(Happening.Cared.class::isInstance),
    END(Happening.Closed.class::isInstance),
    PUT_OFF(Happening.PutOff.class::isInstance),
    LEFT_OUT(Happening.LeftOut.class::isInstance),
    NOTE(Happening.Jotted.class::isInstance);

    static final Vocabulary<EntrySort> WORDS = Vocabulary.<EntrySort>of("sort of entry")
            .with(POTTED, "potted")
            .with(MOVED, "moved", "move")
            .with(CHECKED, "checked", "check")
            .with(FIRST_FLOWER, "first flower")
            .with(FULL_BLOOM, "full bloom")
            .with(PAST_BLOOM, "past bloom")
            .with(CARE, "care", "cared")
            .with(END, "end", "ended", "done")
            .with(PUT_OFF, "put off")
            .with(LEFT_OUT, "left out")
            .with(NOTE, "noted", "jotted");

    private final Predicate<Happening> test;

    EntrySort(Predicate<Happening> test) {
        this.test = test;
    }

    boolean is(Event event) {
        return test.test(event.what());
    }

    private static boolean flowered(Happening what, BloomPoint point) {
        return what instanceof Happening.Flowered flowered && flowered.point() == point;
    }
}
