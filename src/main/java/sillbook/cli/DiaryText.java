// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import sillbook.model.Journal;
import sillbook.words.Days;
import sillbook.words.DiaryEntry;
import sillbook.words.PotNames;

/** The diary as plain lines. */
record DiaryText(Journal journal) {

    /** {@code Sun 10 Jan 2027, T4: checked: roots, shoot 6 cm (written Tue 12 Jan 2027)}. */
    String line(DiaryEntry entry) {
        String pots = entry.pots().isEmpty() ? "" : new PotNames(journal).labels(entry.pots()) + ": ";
        String written = entry.writtenOn()
                .map(day -> " (written " + Days.full(day) + ")")
                .orElse("");
        return Days.full(entry.day()) + ", " + pots + entry.says() + written;
    }
}
