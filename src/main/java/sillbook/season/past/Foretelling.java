// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.model.Season;

/**
 * A window that was kept, and the day that came. Pots made together to which the same was foretold are one of these and
 * not several: they stood through the same weather.
 *
 * @param pots by label, at least one
 * @param came the day, of several pots the middle of theirs, of an even number the earlier of the two
 */
public record Foretelling(List<Id<Pot>> pots, Season winter, KeptWindow window, LocalDate came) {
    public Foretelling {
        pots = List.copyOf(pots);
    }

    public boolean isHeld() {
        return daysOff() == 0;
    }

    /** How many days after the last of the window it came; less than 0 where it came before the first. */
    public long daysOff() {
        long late = ChronoUnit.DAYS.between(window.latest(), came);
        long early = ChronoUnit.DAYS.between(window.earliest(), came);
        return Math.max(0, late) + Math.min(0, early);
    }
}
