// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.Instant;
import java.time.LocalDate;
import sillbook.change.Hand;
import sillbook.handbook.Handbook;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.words.DayReader;
import sillbook.words.Looking;

/**
 * What a line is read against.
 *
 * @param today the journal's day
 * @param ids for what the line would make
 */
public record Bench(Journal journal, LocalDate today, Handbook handbook, Ids ids) {
    Season season() {
        return journal.seasonOf(today);
    }

    DayReader days(Looking looking) {
        return new DayReader(today, looking);
    }

    /** A hand to try a change with, at the start of today. */
    Hand hand() {
        Instant now = today.atStartOfDay(journal.settings().zone()).toInstant();
        return new Hand(now, today, ids);
    }
}
