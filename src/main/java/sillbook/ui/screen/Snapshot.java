// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.LocalDate;
import java.util.List;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.Settings;

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

    /** The same journal with other settings, before anything is kept. */
    public Snapshot withSettings(Settings settings) {
        Journal changed = journal.with(List.of(new Edit.Put(settings)));
        return new Snapshot(changed, today, toTakeBack, toPutBack);
    }
}
