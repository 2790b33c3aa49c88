// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/**
 * A pot with all that is worked out for it alone, before anything is asked of its neighbours.
 *
 * @param windows when the stages to come begin
 */
record Foretold(
        PotLife life,
        PotFigures figures,
        Pins pins,
        Prospect prospect,
        Map<Milestone, Window> windows,
        Optional<Readiness> readiness,
        Optional<WishNow> wish) {

    /** The last good day in the cold, of a pot that stands there. */
    Optional<LocalDate> useBy() {
        return readiness.flatMap(ready -> prospect.useBy());
    }

    /** The cold it needs; empty when nothing in it needs any. */
    Optional<ColdNeed> coldNeed() {
        return prospect.coldNeed();
    }

    /** Whether a plan was adopted that means something for it. */
    boolean isPlanned() {
        return pins.meant().isPresent();
    }

    LocalDate today() {
        return prospect.today();
    }

    /** The day it came to stand as it does. */
    LocalDate begun() {
        return life.standing().begun().map(Day::likely).orElse(today());
    }
}
