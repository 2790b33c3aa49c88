// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.Settings;

/**
 * The journal at one moment, as the shell tells it.
 *
 * @param at when that is
 * @param toTakeBack how many steps can be taken back
 * @param toPutBack how many steps can be put back
 */
public record Snapshot(Journal journal, Instant at, int toTakeBack, int toPutBack) {

    /** As a day begins. */
    public Snapshot(Journal journal, LocalDate today, int toTakeBack, int toPutBack) {
        this(journal, today.atStartOfDay(journal.settings().zone()).toInstant(), toTakeBack, toPutBack);
    }

    /** The journal's day. */
    public LocalDate today() {
        return LocalDate.ofInstant(at, journal.settings().zone());
    }

    public Season season() {
        return journal.seasonOf(today());
    }

    public Snapshot withToday(LocalDate day) {
        return new Snapshot(journal, day, toTakeBack, toPutBack);
    }

    /** The same journal a while later. */
    Snapshot at(Instant later) {
        return new Snapshot(journal, later, toTakeBack, toPutBack);
    }

    /** The same journal with other settings, before anything is kept. */
    public Snapshot withSettings(Settings settings) {
        Journal changed = journal.with(List.of(new Edit.Put(settings)));
        return new Snapshot(changed, at, toTakeBack, toPutBack);
    }
}
