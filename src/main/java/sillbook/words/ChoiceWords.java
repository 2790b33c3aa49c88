// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Choice.Mark;
import sillbook.season.past.UsualCount;

/** What is chosen for a season and what is not, as it is said. */
public final class ChoiceWords {
    private ChoiceWords() {}

    /** {@code chosen, 10 bulbs}; {@code set aside: floppy}. */
    public static String mark(Mark mark) {
        return mark.fold(
                chosen -> "chosen, " + Counts.of(chosen.bulbs(), "bulb"),
                setAside -> "set aside" + (setAside.reason().isEmpty() ? "" : ": " + setAside.reason()),
                () -> "undecided");
    }

    /** Where a number that was not said comes from: {@code as many as last bought}. */
    public static String basis(UsualCount usual) {
        return switch (usual.basis()) {
            case CHOSEN -> "as many as last chosen";
            case BOUGHT -> "as many as last bought";
            case POTTED -> "as many as last potted";
        };
    }
}
