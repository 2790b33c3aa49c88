// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import sillbook.model.Ids;

/** What a book is written with: the clock, the source of new ids, the foretelling of windows. */
record Desk(Clock clock, Ids ids, Forecast forecast) {

    /** To the thousandth of a second, which is as fine as a journal keeps it. */
    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }
}
