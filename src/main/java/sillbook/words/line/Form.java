// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;

/** One thing a line can say. */
interface Form {
    FormHelp help();

    /** What such a line begins with, in small letters; none when it is known by what else it says. */
    default List<String> keywords() {
        return List.of();
    }

    /** What it can hold, in the order in which equals are tried. */
    List<Slot<?>> slots();

    /** How many things are missing that it cannot be without. */
    int wanting(Filled filled);

    /** Says what it means, and what change it comes to or what is still wanting. */
    void draw(Filled filled, Draft draft);
}
