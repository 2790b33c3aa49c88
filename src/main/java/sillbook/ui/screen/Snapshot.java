// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.LocalDate;
import sillbook.model.Journal;
import sillbook.model.Season;

/**
 * The journal at one moment, as the shell tells it.
 *
 * @param today the journal's day
 * @param toTakeBack how many steps can be taken back
 * @param toPutBack how many steps can be put back
 */
public record Snapshot(Journal journal, LocalDate today, int toTakeBack, int toPutBack) {

    public Season season() {
        return journal.seasonOf(today);
    }

    public Snapshot withToday(LocalDate day) {
        return new Snapshot(journal, day, toTakeBack, toPutBack);
    }
}
