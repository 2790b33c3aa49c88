// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.words.Vocabulary;

/** The sorts of entry that a line can point at. */
enum EntrySort {
    POTTED,
    MOVED,
    CHECKED,
    FIRST_FLOWER,
    FULL_BLOOM,
    PAST_BLOOM,
    CARE,
    END,
    PUT_OFF,
    LEFT_OUT,
    NOTE,
    DISPLAY;

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
            .with(NOTE, "noted", "jotted")
            .with(DISPLAY, "display", "displayed");

    boolean is(Event event) {
        return of(event.what()) == this;
    }

    private static EntrySort of(Happening what) {
        return what.fold(new Sorting());
    }

    /** The sort of each happening. */
    private static final class Sorting implements Happening.Cases<EntrySort> {
        @Override
        public EntrySort potted(Happening.Potted happening) {
            return POTTED;
        }

        @Override
        public EntrySort moved(Happening.Moved happening) {
            return MOVED;
        }

        @Override
        public EntrySort checked(Happening.Checked happening) {
            return CHECKED;
        }

        @Override
        public EntrySort flowered(Happening.Flowered happening) {
            return switch (happening.point()) {
                case FIRST_FLOWER -> FIRST_FLOWER;
                case FULL_BLOOM -> FULL_BLOOM;
                case PAST_BLOOM -> PAST_BLOOM;
            };
        }

        @Override
        public EntrySort cared(Happening.Cared happening) {
            return CARE;
        }

        @Override
        public EntrySort closed(Happening.Closed happening) {
            return END;
        }

        @Override
        public EntrySort putOff(Happening.PutOff happening) {
            return PUT_OFF;
        }

        @Override
        public EntrySort leftOut(Happening.LeftOut happening) {
            return LEFT_OUT;
        }

        @Override
        public EntrySort jotted(Happening.Jotted happening) {
            return NOTE;
        }

        @Override
        public EntrySort displayed(Happening.Displayed happening) {
            return DISPLAY;
        }
    }
}
