// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Intention;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/**
 * A pot with all that is worked out for it alone, before anything is asked of its neighbours.
 *
 * @param windows when the stages to come begin
 * @param meant what is meant for it by the plan that was adopted
 */
record Foretold(
        PotLife life,
        PotFigures figures,
        Pins pins,
        Prospect prospect,
        Map<Milestone, Window> windows,
        Optional<Readiness> readiness,
        Optional<WishNow> wish,
        Optional<Intention> meant) {

    /** The last good day in the cold, of a pot that stands there. */
    Optional<LocalDate> useBy() {
        return readiness.flatMap(ready -> prospect.useBy());
    }

    /** The cold it needs; empty when nothing in it needs any. */
    Optional<ColdNeed> coldNeed() {
        return prospect.coldNeed();
    }

    boolean isPlanned() {
        return meant.isPresent();
    }

    LocalDate today() {
        return prospect.today();
    }

    /** The day it came to stand as it does. */
    LocalDate begun() {
        return life.standing().begun().map(Day::likely).orElse(today());
    }
}
